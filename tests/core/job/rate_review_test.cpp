// SPDX-License-Identifier: GPL-3.0-or-later
// From houses in a book to learned rates: known paces are found again, absurd entries are held off.
#include "book/starter_book.h"
#include "job/house_review.h"
#include "job/rate_review.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace miterbook {
namespace {

constexpr Date firstDay{std::chrono::year(2026), std::chrono::month(1), std::chrono::day(5)};

/// A shop whose true minutes for a door and a foot of base are known.
class SimulatedBook {
public:
    SimulatedBook(std::uint32_t seed, double doorMinutes, double footMinutes)
        : m_random(seed)
        , m_door(doorMinutes)
        , m_foot(footMinutes) {
        m_book.prices = starterBook(m_ids);
    }

    void addHouse() {
        House house;
        house.id = m_ids.next<House>();
        house.plan = Id<Plan>(1);
        house.work = m_ids.next<Plan>();
        house.name = "Lot";
        house.stage = HouseStage::finished;
        house.finished = addDays(firstDay, 9 * ++m_houses);
        m_book.jobs.of<House>().put(house);
        const int doors = 12 + static_cast<int>(m_random() % 10);
        const int feet = 400 + static_cast<int>(m_random() % 300);
        sell(house.work, Task::prehungDoor, Quantity::count(doors));
        sell(house.work, Task::base, Quantity::count(feet));
        work(house.id, Task::prehungDoor, doors * m_door * scatter());
        work(house.id, Task::base, feet * m_foot * scatter());
    }
    void work(Id<House> house, Task task, double minutes) {
        TimeEntry entry;
        entry.id = m_ids.next<TimeEntry>();
        entry.date = firstDay;
        entry.person = Id<CrewMember>(1);
        entry.house = house;
        entry.work = pieceOfWork(task);
        entry.time = Hours::minutes(std::llround(minutes));
        m_book.time.change(nullptr, &entry);
    }
    std::vector<TaskRate> rates() const { return taskRates(m_book, allSightings(m_book, m_sold)); }
    TaskRate rate(Task task) const {
        for (const TaskRate& each : rates()) {
            if (each.held.task == task)
                return each;
        }
        ADD_FAILURE() << "no rate";
        return {};
    }
    Book& book() { return m_book; }

private:
    void sell(Id<Plan> plan, Task task, Quantity quantity) {
        SoldTask sold;
        sold.id = m_ids.next<SoldTask>();
        sold.plan = plan;
        sold.work = pieceOfWork(task);
        sold.task = task;
        sold.quantity = quantity;
        sold.hours = Hours::whole(8);
        m_sold.put(sold);
        SoldWork work;
        work.id = m_ids.next<SoldWork>();
        work.plan = plan;
        work.work = sold.work;
        work.hours = sold.hours;
        work.labour = Money::dollars(320);
        m_book.jobs.of<SoldWork>().put(work);
    }
    double scatter() {
        constexpr double spread = 0.15;
        return std::lognormal_distribution<double>(-spread * spread / 2, spread)(m_random);
    }

    std::mt19937 m_random;
    double m_door;
    double m_foot;
    int m_houses = 0;
    Book m_book;
    IdSource m_ids{100};
    SoldTasks m_sold;
};

TEST(RateReview, KnownPacesAreFoundAgain) {
    for (const std::uint32_t seed : {3U, 5U, 8U}) {
        SimulatedBook shop(seed, 74, 1.1);
        for (int i = 0; i < 60; ++i)
            shop.addHouse();
        EXPECT_NEAR(shop.rate(Task::prehungDoor).learned.minutes / 74, 1, .06) << seed;
        EXPECT_NEAR(shop.rate(Task::base).learned.minutes / 1.1, 1, .06) << seed;
    }
}

TEST(RateReview, EightyHoursForADoorMoveTheRateNoFurtherThanSaid) {
    for (const std::uint32_t seed : {13U, 21U}) {
        SimulatedBook shop(seed, 60, 1.5);
        for (int i = 0; i < 8; ++i)
            shop.addHouse();
        const TaskRate before = shop.rate(Task::prehungDoor);
        // The eighty hours stand in the last house, whose own sighting they spoil: at worst the
        // rate loses that house and gains the absurd one, each within the bound.
        std::vector<RateSighting> others = before.sightings;
        others.pop_back();
        const double bound = mostMoved(before.starter, others);
        shop.work(std::prev(shop.book().jobs.of<House>().end())->first, Task::prehungDoor, 4800);
        const double moved = shop.rate(Task::prehungDoor).learned.minutes / before.learned.minutes;
        EXPECT_GT(moved, 1);
        EXPECT_LT(moved, bound * bound) << seed;
        EXPECT_LT(moved, 1.12) << seed;
        EXPECT_EQ(shop.rate(Task::prehungDoor).learned.odd, 1);
    }
}

TEST(RateReview, AcceptingIsOneChangeWithItsEvidence) {
    SimulatedBook shop(1, 80, 1.4);
    for (int i = 0; i < 12; ++i)
        shop.addHouse();
    const TaskRate rate = shop.rate(Task::prehungDoor);
    const Edit edit = acceptRateEdit(shop.book(), rate);
    ASSERT_EQ(edit.changes.size(), 1U);
    apply(shop.book(), edit);
    const LabourRate& held = *shop.book().prices.rate(Task::prehungDoor);
    EXPECT_EQ(held.origin, Origin::learned);
    EXPECT_EQ(held.minutes, rate.learnedMinutes());
    EXPECT_NE(held.source.find("learned from 12 houses to 2026-04-23"), std::string::npos)
        << held.source;
    const TaskRate again = shop.rate(Task::prehungDoor);
    EXPECT_EQ(again.starter, rate.starter) << "no house counts twice";
    EXPECT_EQ(again.learned, rate.learned);
    apply(shop.book(), inverse(edit));
    EXPECT_EQ(*shop.book().prices.rate(Task::prehungDoor), rate.held);
}

TEST(RateReview, ALongTrendIsToldAtSomePoints) {
    SimulatedBook shop(2, 60, 1.5);
    for (int i = 0; i < 150; ++i)
        shop.addHouse();
    const TaskRate rate = shop.rate(Task::prehungDoor);
    const auto trend = trendOf(rate, 20);
    EXPECT_LE(trend.size(), 21U);
    EXPECT_GE(trend.size(), 19U);
    EXPECT_EQ(trend.back().learned, rate.learned);
    EXPECT_EQ(trendOf(rate, 500).size(), 150U);
}

TEST(HouseReview, OnlyFinishedHousesWithABidAreCompared) {
    SimulatedBook shop(4, 60, 1.5);
    for (int i = 0; i < 3; ++i)
        shop.addHouse();
    EXPECT_EQ(finishedResults(shop.book()).size(), 3U);
    House open = shop.book().jobs.of<House>().begin()->second;
    open.stage = HouseStage::underway;
    shop.book().jobs.of<House>().put(open);
    EXPECT_EQ(finishedResults(shop.book()).size(), 2U);
    EXPECT_EQ(resultOf(shop.book(), open).used, shop.book().time.total(open.id));
}

} // namespace
TEST(HouseReview, CountsAgreedExtrasAndAcceptedBackcharges) {
    SimulatedBook shop(5, 60, 1.5);
    shop.addHouse();
    const HouseResult before = finishedResults(shop.book()).front();
    Extra extra;
    extra.id = Id<Extra>(900'001);
    extra.house = before.house;
    extra.state = ExtraState::approved;
    extra.price = Money::dollars(400);
    shop.book().jobs.of<Extra>().put(extra);
    extra.id = Id<Extra>(900'002);
    extra.state = ExtraState::priced; // nobody said yes
    shop.book().jobs.of<Extra>().put(extra);
    Backcharge scratch{Id<Backcharge>(900'003), before.house, noDate, "scratched door",
        Money::dollars(120), BackchargeState::accepted};
    shop.book().jobs.of<Backcharge>().put(scratch);
    scratch.id = Id<Backcharge>(900'004);
    scratch.state = BackchargeState::refused;
    shop.book().jobs.of<Backcharge>().put(scratch);

    const HouseResult after = finishedResults(shop.book()).front();
    EXPECT_EQ(after.price, before.price + Money::dollars(400));
    EXPECT_EQ(after.cost, before.cost + Money::dollars(120));
    EXPECT_EQ(after.bidProfit, before.bidProfit) << "nobody bid them";
    EXPECT_EQ(resultOf(shop.book(), *shop.book().house(before.house)), after);
}

} // namespace miterbook
