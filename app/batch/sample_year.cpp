// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_year.h"

#include "batch/sample_bills.h"
#include "batch/sample_dates.h"
#include "batch/sample_draw.h"
#include "job/figures.h"
#include "job/house_stage.h"
#include "job/start_house.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace miterbook {

namespace {

constexpr double paceSpread = 0.12;
constexpr double houseSpread = 1.0 / 6;
constexpr double slowOnSecondPlan = 1.5;

bool isWeekday(Date day) {
    const unsigned name = std::chrono::weekday(std::chrono::sys_days(day)).c_encoding();
    return name != 0 && name != 6;
}

Date nextWeekday(Date day) {
    do
        day = addDays(day, 1);
    while (!isWeekday(day));
    return day;
}

/// The hours of one house, written day by day until the work is done.
class HouseTime {
public:
    HouseTime(SampleDraw& draw, IdSource& ids, Id<House> house,
        const std::vector<Id<CrewMember>>& crew, Date first)
        : m_draw(draw)
        , m_ids(ids)
        , m_house(house)
        , m_crew(crew)
        , m_day(first) {}

    /// Works a piece of work off until it is done or the day is `until`; false in the latter case.
    bool work(const WorkBid& bid, Task task, double pace, Date until) {
        std::int64_t left = std::llround(static_cast<double>(bid.hours.minutes()) * pace);
        const std::int64_t all = std::max<std::int64_t>(left, 1);
        Quantity done;
        while (left > 0) {
            if (m_day >= until)
                return false;
            const std::int64_t minutes = std::min<std::int64_t>(left, pieceOfDay());
            left -= minutes;
            const Quantity reached = left <= 0
                ? bid.units
                : Quantity::thousandths(bid.units.thousandths() * (all - left) / all / 1000 * 1000);
            add(bid.work, m_draw.one(40) ? task : Task::other, TimeKind::work, minutes,
                reached - done);
            done = reached;
        }
        return true;
    }
    void side(TimeKind kind, std::int64_t minutes) {
        const PieceOfWork work = kind == TimeKind::travel ? PieceOfWork::trips : PieceOfWork::punch;
        add(work, Task::other, kind, minutes, {});
    }
    void skipDays(int days) {
        for (int i = 0; i < days; ++i)
            m_day = nextWeekday(m_day);
        m_used = 0;
    }
    Date day() const { return m_day; }
    std::vector<TimeEntry> take() { return std::move(m_entries); }

private:
    /// Two to six hours in quarters, as long as the day of the two who are there has them.
    std::int64_t pieceOfDay() const { return 15 * (8 + m_draw.below(17)); }

    void add(PieceOfWork work, Task task, TimeKind kind, std::int64_t minutes, Quantity done) {
        constexpr std::int64_t dayOfTwo = 12 * 60; // two houses may share the day
        if (m_used + minutes > dayOfTwo)
            skipDays(1);
        if (m_used == 0 && kind != TimeKind::travel) {
            m_used = 1;
            side(TimeKind::travel, 30);
        }
        TimeEntry entry;
        entry.id = m_ids.next<TimeEntry>();
        entry.date = m_day;
        entry.person = m_crew[m_turn++ % m_crew.size()];
        entry.house = m_house;
        entry.work = work;
        entry.task = task;
        entry.kind = kind;
        entry.time = Hours::minutes(minutes);
        entry.done = kind == TimeKind::work && task == Task::other ? done : Quantity();
        m_used += minutes;
        m_entries.push_back(std::move(entry));
    }

    SampleDraw& m_draw;
    IdSource& m_ids;
    Id<House> m_house;
    const std::vector<Id<CrewMember>>& m_crew;
    Date m_day;
    std::int64_t m_used = 0; ///< minutes of the day
    std::size_t m_turn = 0;
    std::vector<TimeEntry> m_entries;
};

/// A year being made.
class YearMaker {
public:
    YearMaker(OpenedBook& opened, const SampleYear& year)
        : m_opened(opened)
        , m_year(year)
        , m_draw(year.seed) {}

    Result<void> make() {
        if (auto found = lookAround(); !found)
            return found;
        const int all = m_year.finished + 2;
        for (int n = 0; n < all; ++n) {
            const bool underway = n >= m_year.finished;
            const int daysAgo = underway ? 9 - 4 * (n - m_year.finished)
                                         : 360 - n * 270 / std::max(1, m_year.finished);
            if (auto made = makeHouse(n, addDays(m_year.today, -daysAgo), underway); !made)
                return made;
        }
        if (auto paid = addSampleBills(m_opened, m_houses, m_year.today, m_year.seed + 1); !paid)
            return paid;
        return addSampleDates(m_opened, m_houses, m_year.today);
    }

private:
    Result<void> lookAround() {
        for (const auto& [id, plan] : m_opened.book().jobs.of<Plan>()) {
            if (!plan.house)
                m_plans.push_back(id);
        }
        for (const auto& [id, person] : m_opened.book().prices.of<CrewMember>()) {
            if (person.active)
                m_crew.push_back(id);
        }
        if (m_plans.empty())
            return badInput("A sample year needs a plan to build houses from: bring one in first.");
        if (m_crew.empty())
            return badInput("A sample year needs somebody in the crew.");
        return {};
    }

    Result<void> makeHouse(int n, Date first, bool underway) {
        const Id<Plan> plan = m_plans[static_cast<std::size_t>(n) % m_plans.size()];
        if (auto open = m_opened.workbook.openPlan(plan); !open)
            return open;
        HouseStart start;
        start.plan = plan;
        start.lot = std::to_string(101 + n);
        start.name = "Lot " + start.lot;
        start.started = addDays(first, -20);
        const auto begun = startHouse(m_opened.book(), m_opened.workbook.ids(), start);
        if (!begun)
            return begun.error();
        if (auto done = m_opened.perform(*begun); !done)
            return done;
        const House house = std::prev(m_opened.book().jobs.of<House>().end())->second;
        m_houses.push_back(house.id);
        return workHouse(house, isWeekday(first) ? first : nextWeekday(first), underway);
    }

    Result<void> workHouse(House house, Date first, bool underway) {
        const Book& book = m_opened.book();
        IdSource& ids = m_opened.workbook.ids();
        const Estimate estimate = figuresFor(book, house.work, {}, Effort::quick).estimate;
        HouseTime time(m_draw, ids, house.id, m_crew, first);
        const bool done = workAll(time, house.plan, estimate, underway);
        house.stage = done ? HouseStage::finished : HouseStage::underway;
        const Date last = std::min(time.day(), m_year.today);
        EditBuilder won(book, (done ? "Finish " : "Win ") + house.name);
        putHouseStage(won, book, ids, house, last, &estimate);
        if (auto put = m_opened.perform(won.take()); !put)
            return put;
        EditBuilder hours(book, "Hours of " + house.name);
        for (TimeEntry& entry : time.take())
            hours.put(std::move(entry));
        return m_opened.perform(hours.take());
    }

    bool workAll(HouseTime& time, Id<Plan> plan, const Estimate& estimate, bool underway) {
        const Date until = underway ? m_year.today : addDays(m_year.today, 400);
        for (const WorkBid& bid : workBids(estimate)) {
            if (bid.work == PieceOfWork::trips || bid.work == PieceOfWork::punch)
                continue;
            const double pace = paceOf(plan, bid.work) * m_draw.scatter(houseSpread);
            if (!time.work(bid, firstTask(estimate, bid.work), pace, until))
                return false;
            if (m_draw.one(5))
                time.side(TimeKind::waiting, 30 * (1 + m_draw.below(3)));
        }
        if (underway)
            return false;
        time.skipDays(4);
        time.side(TimeKind::punch, 60 * (2 + m_draw.below(4)));
        if (m_draw.one(4)) {
            time.skipDays(3);
            time.side(TimeKind::callback, 60 * (1 + m_draw.below(3)));
        }
        return true;
    }

    static Task firstTask(const Estimate& estimate, PieceOfWork work) {
        const auto line = std::ranges::find(estimate.lines, work, &EstimateLine::work);
        return line == estimate.lines.end() ? Task::other : line->task;
    }

    double paceOf(Id<Plan> plan, PieceOfWork work) {
        const auto [it, isNew] = m_paces.try_emplace({plan, work}, 1.0);
        if (isNew) {
            it->second = m_draw.scatter(paceSpread);
            const bool hard = work == PieceOfWork::stairs || work == PieceOfWork::crown;
            if (hard && m_plans.size() > 1 && plan == m_plans[1])
                it->second = slowOnSecondPlan;
        }
        return it->second;
    }

    OpenedBook& m_opened;
    const SampleYear& m_year;
    SampleDraw m_draw;
    std::vector<Id<Plan>> m_plans;
    std::vector<Id<CrewMember>> m_crew;
    std::vector<Id<House>> m_houses; ///< made so far
    std::map<std::pair<Id<Plan>, PieceOfWork>, double> m_paces;
};

} // namespace

Result<void> addSampleYear(OpenedBook& opened, const SampleYear& year) {
    return YearMaker(opened, year).make();
}

} // namespace miterbook
