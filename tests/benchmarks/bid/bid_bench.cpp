// SPDX-License-Identifier: GPL-3.0-or-later
// bid_bench: a price sheet of 12 plans x 3 elevations x 10 options (the plan as drawn is a column
// of its own beside them), priced for the first time and again after a change; and one edit of one
// bid. Milliseconds of the wall clock; re-pricing and edits are medians of five.
#include "basics/number_text.h"
#include "book/starter_book.h"
#include "job/edit.h"
#include "job/price_sheet.h"
#include "support/sample_house.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>

namespace miterbook {
namespace {

constexpr int plans = 12;
constexpr int elevations = 3;
constexpr int options = 10;

double milliseconds(const std::function<void()>& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

double median(const std::function<void(int)>& work) {
    std::vector<double> times;
    for (int run = 0; run < 5; ++run)
        times.push_back(milliseconds([&] { work(run); }));
    std::ranges::sort(times);
    return times[times.size() / 2];
}

void say(const char* what, double time) {
    std::printf("%-66s %9.1f ms\n", what, time);
}

/// A variant that puts one more window, of its own size, into the first room.
void addVariant(PlanRows& rows, IdSource& ids, Id<Plan> plan, VariantKind kind, int number) {
    Variant variant;
    variant.id = ids.next<Variant>();
    variant.plan = plan;
    variant.kind = kind;
    variant.name = std::string(word(kind)) + " " + std::to_string(number);
    rows.of<Variant>().put(variant);
    const Opening* model = nullptr;
    for (const auto& [id, opening] : rows.of<Opening>()) {
        if (opening.kind == OpeningKind::window && !opening.variant) {
            model = &opening;
            break;
        }
    }
    Opening more = *model;
    more.id = ids.next<Opening>();
    more.variant = variant.id;
    more.mark = variant.name;
    more.width = Length::inches(24 + 3 * number);
    rows.of<Opening>().put(more);
}

Book setOfPlans() {
    IdSource ids(10);
    Book book;
    book.prices = starterBook(ids);
    PlanSet set;
    set.id = Id<PlanSet>(5);
    set.name = "Twelve plans";
    book.jobs.of<PlanSet>().put(set);
    for (int i = 0; i < plans; ++i) {
        SampleHouse house = sampleHouse(book.prices, ids);
        house.plan.set = set.id;
        house.plan.name = "Plan " + std::to_string(i + 1);
        const Table<Room> rooms = house.rows.of<Room>();
        for (const auto& [id, held] : rooms) { // each plan has walls of its own
            Room room = held;
            for (Wall& wall : room.walls)
                wall.length += Length::inches(i);
            room.outline.clear();
            house.rows.of<Room>().put(room);
        }
        for (int n = 1; n < elevations; ++n)
            addVariant(house.rows, ids, house.plan.id, VariantKind::elevation, n);
        for (int n = 1; n < options; ++n)
            addVariant(house.rows, ids, house.plan.id, VariantKind::option, n);
        book.jobs.of<Plan>().put(house.plan);
        book.sheets[house.plan.id] = house.rows;
    }
    return book;
}

void put(Book& book, const LabourRate& rate) {
    book.prices.of<LabourRate>().put(rate);
}

/// What less work on the stick plans would cost shows here.
Money sumOf(const std::vector<PlanPrices>& sheet) {
    Money sum;
    for (const PlanPrices& plan : sheet) {
        for (const auto& column : plan.columns)
            sum += column.price;
        for (const auto& option : plan.options) {
            for (const Money change : option.changes)
                sum += change;
        }
    }
    return sum;
}

void measureSheet(Book book) {
    StickMemory memory(sheetMemory);
    std::vector<PlanPrices> sheet;
    const auto price
        = [&](Effort effort) { sheet = priceSheet(book, Id<PlanSet>(5), memory, effort); };
    say("price sheet for the first time, every stick plan thorough",
        milliseconds([&] { price(Effort::thorough); }));
    std::printf("    %zu plans, %zu columns, %zu options, %zu problems\n", sheet.size(),
        sheet.front().columns.size(), sheet.front().options.size(), sheet.front().problems.size());
    std::printf("    all its prices together come to %s\n", formatMoney(sumOf(sheet)).c_str());
    LabourRate rate = book.prices.of<LabourRate>().begin()->second;
    say("priced again after a labour rate has changed", median([&](int run) {
        rate.minutes = MinutesPerUnit::whole(40 + run);
        put(book, rate);
        price(Effort::thorough);
    }));
    Terms terms = book.prices.terms();
    terms.id = Id<Terms>(1);
    say("priced again after the profit has changed", median([&](int run) {
        terms.profit = Percent::whole(20 + run);
        book.prices.of<Terms>().put(terms);
        price(Effort::thorough);
    }));
    Stick stick = book.prices.of<Stick>().begin()->second;
    say("priced again after one stick's price has changed", milliseconds([&] {
        stick.price += Money::cents(35);
        book.prices.of<Stick>().put(stick);
        price(Effort::thorough);
    }));
}

void measureEdit(const Book& given) {
    Book book = given;
    const Id<Plan> plan = book.jobs.of<Plan>().begin()->first;
    StickMemory memory;
    const auto planFor = [&](const StickNeed& need) {
        StickQuestion question = stickQuestion(need, book.prices);
        if (const StickPlan* known = memory.find(question))
            return *known;
        StickPlan made = planSticks(need, book.prices, Effort::quick);
        memory.keep(std::move(question), made);
        return made;
    };
    (void)figuresFor(book, plan, {}, planFor);
    LabourRate rate = book.prices.of<LabourRate>().begin()->second;
    say("one bid after a labour rate has changed", median([&](int run) {
        rate.minutes = MinutesPerUnit::whole(40 + run);
        put(book, rate);
        (void)figuresFor(book, plan, {}, planFor);
    }));
    Opening opening = book.sheet(plan).of<Opening>().begin()->second;
    say("one bid after an opening has changed, quick sticks", median([&](int run) {
        opening.width += Length::inches(1 + run);
        book.sheets[plan].of<Opening>().put(opening);
        (void)figuresFor(book, plan, {}, planFor);
    }));
}

} // namespace
} // namespace miterbook

int main() {
    const miterbook::Book book = miterbook::setOfPlans();
    miterbook::measureSheet(book);
    miterbook::measureEdit(book);
}
