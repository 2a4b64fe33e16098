// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_extras.h"

#include "bill/extra_price.h"
#include "job/bill_edits.h"

#include <array>
#include <cmath>

namespace miterbook {

namespace {

/// Work that is asked for on the way.
struct Wish {
    const char* title;
    Task task;
    int quantity;
    int material; ///< dollars
};

constexpr std::array wishes{
    Wish{"Chair rail in the dining room", Task::chairRail, 52, 96},
    Wish{"Two more shelves in the pantry", Task::other, 2, 41},
    Wish{"Window seat in the bay", Task::other, 6, 185},
    Wish{"Shiplap behind the stair", Task::shiplap, 64, 210},
    Wish{"Cased opening to the study", Task::casedOpening, 1, 78},
};

Result<Extra> addWish(OpenedBook& opened, const SampleHouse& house, int nth, Date day) {
    const Wish& wish = wishes.at(static_cast<std::size_t>(house.number + nth) % wishes.size());
    const Book& book = opened.book();
    const Plan* plan = book.plan(book.house(house.id)->work);
    const Builder* builder = plan ? book.builderOf(*plan) : nullptr;
    Extra extra;
    extra.house = house.id;
    extra.asked = day;
    extra.askedBy = builder && !builder->contact.empty() ? builder->contact : "the superintendent";
    extra.title = wish.title;
    ExtraLine line;
    line.task = wish.task;
    line.quantity = Quantity::count(wish.quantity);
    line.material = Money::dollars(wish.material);
    const auto edit = addExtra(book, opened.workbook.ids(), extra, {line});
    if (!edit)
        return edit.error();
    if (auto added = opened.perform(*edit); !added)
        return added.error();
    return std::prev(book.jobs.of<Extra>().end())->second;
}

Result<void> put(OpenedBook& opened, const char* verb, const Result<Extra>& extra) {
    if (!extra)
        return extra.error();
    return opened.perform(putEdit(opened.book(), verb + extra->title, *extra));
}

/// What the extra took: about what its price counts on.
Result<void> addHours(OpenedBook& opened, SampleDraw& draw, const Extra& extra, Date day) {
    const Book& book = opened.book();
    const auto price = priceExtra(linesOf(book, extra), book.prices);
    if (!price)
        return price.error();
    const double minutes = static_cast<double>(price->hours.minutes()) * draw.scatter(0.2);
    TimeEntry entry;
    entry.id = opened.workbook.ids().next<TimeEntry>();
    entry.date = day;
    entry.person = book.prices.of<CrewMember>().begin()->first;
    entry.house = extra.house;
    entry.work = PieceOfWork::extras;
    entry.time = Hours::minutes(std::clamp<std::int64_t>(std::llround(minutes / 15) * 15, 15, 600));
    entry.note = extra.title;
    return opened.perform(putEdit(book, "Hours of " + extra.title, entry));
}

void planDone(SampleDiary& diary, OpenedBook& opened, SampleDraw& draw, const SampleHouse& house) {
    diary.on(house.dayAt(35), [&diary, &opened, &draw, house](Date day) -> Result<void> {
        const auto extra = addWish(opened, house, 0, day);
        if (!extra)
            return extra.error();
        const Id<Extra> id = extra->id;
        diary.on(addDays(day, 1), [&opened, id](Date on) {
            const Extra asked = *opened.book().jobs.of<Extra>().find(id);
            return put(opened, "Approve ", approvedExtra(asked, asked.askedBy, on));
        });
        diary.on(house.dayAt(75), [&opened, &draw, id](Date on) -> Result<void> {
            const Extra approved = *opened.book().jobs.of<Extra>().find(id);
            if (auto hours = addHours(opened, draw, approved, on); !hours)
                return hours;
            return put(opened, "Do ", doneExtra(approved, on));
        });
        return {};
    });
}

void planAsked(SampleDiary& diary, OpenedBook& opened, const SampleHouse& house, bool dropped) {
    diary.on(house.dayAt(55), [&opened, house, dropped](Date day) -> Result<void> {
        const auto extra = addWish(opened, house, 2, day);
        if (!extra)
            return extra.error();
        return dropped ? put(opened, "Drop ", droppedExtra(*extra)) : Result<void>();
    });
}

void planBackcharge(SampleDiary& diary, OpenedBook& opened, const SampleHouse& house,
    const char* reason, int dollars, BackchargeState state) {
    diary.on(house.dayAt(90), [&opened, house, reason, dollars, state](Date day) {
        return opened.perform(putEdit(opened.book(), std::string("Enter the backcharge ") + reason,
            Backcharge{opened.workbook.ids().next<Backcharge>(), house.id, day, reason,
                Money::dollars(dollars), state}));
    });
}

} // namespace

void planSampleExtras(SampleDiary& diary, OpenedBook& opened, SampleDraw& draw,
    const SampleHouse& house, bool isLast) {
    const bool firstUnderway = house.underway && !isLast;
    if (house.number % 2 == 0 && !house.underway)
        planDone(diary, opened, draw, house);
    if (house.number % 4 == 3 || firstUnderway)
        planAsked(diary, opened, house, false);
    else if (house.number % 6 == 5)
        planAsked(diary, opened, house, true);
    if (house.number == 1)
        planBackcharge(diary, opened, house, "scratched door slab", 85, BackchargeState::accepted);
    if (house.number == 6)
        planBackcharge(diary, opened, house, "drywall dents", 140, BackchargeState::refused);
    if (isLast)
        planBackcharge(diary, opened, house, "sill swept twice", 60, BackchargeState::claimed);
}

} // namespace miterbook
