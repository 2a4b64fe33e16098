// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate_lines.h"
#include "small_shop.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

Conditions with(std::initializer_list<Condition> list) {
    Conditions conditions;
    for (const Condition condition : list)
        conditions.add(condition);
    return conditions;
}

TEST(HoursFor, RoundsOnceToTheMinute) {
    const auto minutes = [](Quantity quantity, int hundredths, double factor) {
        return hoursFor(quantity, MinutesPerUnit::hundredths(hundredths), factor).minutes();
    };
    EXPECT_EQ(minutes(Quantity::count(3), 5400, 1.0), 162);
    EXPECT_EQ(minutes(Quantity::thousandths(12'345), 160, 1.0), 20); // 19.752
    EXPECT_EQ(minutes(Quantity::count(1), 50, 1.0), 1);              // half a minute, up
    EXPECT_EQ(minutes(Quantity::count(10), 100, 1.05), 11); // 10.5, though 1.05 is not exact
    EXPECT_EQ(minutes(Quantity::count(10), 100, 1.0499), 10);
    EXPECT_EQ(minutes(Quantity(), 100, 1.3), 0);
}

/// Government tables turn man-hours into days: 16,000 SF / 1,000 x 33 man-hours / 8 is 66 man-days
/// [pub: NAVEDTRA 14045 ch. 2]. 33 man-hours a thousand are 1.98 minutes for one.
TEST(HoursFor, ManDaysOfAPublishedExample) {
    const Hours hours = hoursFor(Quantity::count(16'000), MinutesPerUnit::hundredths(198), 1.0);
    EXPECT_EQ(hours, Hours::whole(66 * 8));
}

TEST(LabourFor, RoundsOnceToTheCent) {
    EXPECT_EQ(labourFor(Hours::minutes(90), Money::dollars(40)), Money::dollars(60));
    EXPECT_EQ(labourFor(Hours::minutes(1), Money::cents(3933)), Money::cents(66)); // 65.55
    EXPECT_EQ(labourFor(Hours::minutes(1), Money::cents(3930)), Money::cents(66)); // 65.5, up
}

TEST(EstimateLines, GatherByWorkTaskAndConditions) {
    SmallShop shop;
    shop.addRate(Task::pictureFrameWindow, 30);
    shop.addRate(Task::prehungDoor, 60);
    shop.addFactor(Condition::upperFloor, 110);
    Takeoff takeoff;
    const Conditions upper = with({Condition::upperFloor});
    takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(2), 1),
        taskOf(Task::pictureFrameWindow, Quantity::count(1), 2, upper),
        taskOf(Task::prehungDoor, Quantity::count(1), 3),
        taskOf(Task::pictureFrameWindow, Quantity::count(3), 4)};
    std::vector<std::string> problems;
    const auto lines = estimateLines(takeoff, shop.prices, Money::dollars(60), problems);
    EXPECT_TRUE(problems.empty());
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].work, PieceOfWork::doors);
    EXPECT_EQ(lines[0].labour, Money::dollars(60));
    EXPECT_EQ(lines[1].quantity, Quantity::count(5));
    EXPECT_EQ(lines[1].hours, Hours::minutes(150));
    EXPECT_EQ(lines[1].factor, 1.0);
    ASSERT_EQ(lines[1].sources.size(), 2U);
    EXPECT_EQ(lines[1].sources[0].name, "W1");
    EXPECT_EQ(lines[1].sources[1].name, "W4");
    EXPECT_EQ(lines[2].hours, Hours::minutes(33));
    EXPECT_EQ(lines[2].conditions, upper);
}

TEST(EstimateLines, AWorkOtherThanTheTasksOwnHasItsOwnLine) {
    SmallShop shop;
    shop.addRate(Task::longSide, 5);
    Takeoff takeoff;
    takeoff.tasks = {taskOf(Task::longSide, Quantity::count(2), 1),
        taskOf(Task::longSide, Quantity::count(4), 2)};
    takeoff.tasks[1].work = PieceOfWork::doors;
    std::vector<std::string> problems;
    const auto lines = estimateLines(takeoff, shop.prices, Money::dollars(60), problems);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].work, PieceOfWork::doors);
    EXPECT_EQ(lines[0].hours, Hours::minutes(20));
    EXPECT_EQ(lines[1].hours, Hours::minutes(10));
}

TEST(EstimateLines, ATaskWithoutARateIsSaidOnce) {
    SmallShop shop;
    shop.addFactor(Condition::upperFloor, 110);
    Takeoff takeoff;
    takeoff.tasks = {taskOf(Task::mantel, Quantity::count(1), 1),
        taskOf(Task::mantel, Quantity::count(1), 2, with({Condition::upperFloor}))};
    std::vector<std::string> problems;
    const auto lines = estimateLines(takeoff, shop.prices, Money::dollars(60), problems);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].hours, Hours());
    EXPECT_THAT(problems,
        ::testing::ElementsAre("The book has no labour rate for \"mantel\"; it "
                               "takes no hours here."));
}

} // namespace
} // namespace miterbook
