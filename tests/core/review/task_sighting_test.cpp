// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/task_sighting.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

constexpr Id<House> lot3{3};

EstimateLine lineOf(Task task, int quantity, int bidMinutes, double factor = 1.0) {
    EstimateLine line;
    line.work = pieceOfWork(task);
    line.task = task;
    line.quantity = Quantity::count(quantity);
    line.hours = Hours::minutes(bidMinutes);
    line.factor = factor;
    if (factor > 1)
        line.conditions.add(Condition::stainGrade);
    return line;
}

TimeEntry timeFor(
    PieceOfWork work, int minutes, Task task = Task::other, TimeKind kind = TimeKind::work) {
    TimeEntry entry;
    entry.work = work;
    entry.task = task;
    entry.kind = kind;
    entry.time = Hours::minutes(minutes);
    return entry;
}

} // namespace

TEST(TaskSightings, ShareUnnamedTimeByBidHours) {
    const auto sightings = taskSightings(lot3, noDate,
        {lineOf(Task::prehungDoor, 10, 600), lineOf(Task::pocketDoor, 2, 200),
            lineOf(Task::base, 400, 480)},
        {timeFor(PieceOfWork::doors, 1000)});
    ASSERT_EQ(sightings.size(), 2U) << "base has no time";
    EXPECT_DOUBLE_EQ(sightings[0].minutes, 750);
    EXPECT_DOUBLE_EQ(sightings[1].minutes, 250);
    EXPECT_FALSE(sightings[0].timed);
    EXPECT_EQ(sightings[0].house, lot3);
}

TEST(TaskSightings, GiveNamedTimeToItsTask) {
    const auto sightings = taskSightings(lot3, noDate,
        {lineOf(Task::prehungDoor, 10, 600), lineOf(Task::pocketDoor, 2, 200)},
        {timeFor(PieceOfWork::doors, 300, Task::pocketDoor), timeFor(PieceOfWork::doors, 700)});
    EXPECT_DOUBLE_EQ(sightings[0].minutes, 700);
    EXPECT_DOUBLE_EQ(sightings[1].minutes, 300);
    EXPECT_TRUE(sightings[1].timed);
}

TEST(TaskSightings, SpreadTheRestOverAllWhereEachIsNamed) {
    const auto sightings = taskSightings(lot3, noDate, {lineOf(Task::prehungDoor, 10, 600)},
        {timeFor(PieceOfWork::doors, 500, Task::prehungDoor), timeFor(PieceOfWork::doors, 100)});
    ASSERT_EQ(sightings.size(), 1U);
    EXPECT_DOUBLE_EQ(sightings[0].minutes, 600);
}

TEST(TaskSightings, LeaveOutWhatIsNoWorkAtATask) {
    EXPECT_TRUE(taskSightings(lot3, noDate, {lineOf(Task::prehungDoor, 10, 600)},
        {timeFor(PieceOfWork::doors, 60, Task::other, TimeKind::waiting),
            timeFor(PieceOfWork::doors, 60, Task::other, TimeKind::travel),
            timeFor(PieceOfWork::crown, 60)})
                    .empty());
}

TEST(RateSightings, BringConditionsToPlain) {
    const auto sightings = taskSightings(lot3, noDate,
        {lineOf(Task::prehungDoor, 10, 600), lineOf(Task::prehungDoor, 4, 360, 1.5)},
        {timeFor(PieceOfWork::doors, 1920)}); // twice the bid
    const auto plain = rateSightings(sightings, Task::prehungDoor);
    ASSERT_EQ(plain.size(), 1U) << "one house";
    EXPECT_EQ(plain[0].quantity, Quantity::count(14));
    EXPECT_DOUBLE_EQ(plain[0].rate(), 120);
}

TEST(RateSightings, KeepConditionsApartWhenAsked) {
    Conditions stain;
    stain.add(Condition::stainGrade);
    const auto sightings = taskSightings(lot3, noDate,
        {lineOf(Task::prehungDoor, 10, 600), lineOf(Task::prehungDoor, 4, 360, 1.5)},
        {timeFor(PieceOfWork::doors, 1920)});
    const auto stained = rateSightings(sightings, Task::prehungDoor, stain);
    ASSERT_EQ(stained.size(), 1U);
    EXPECT_DOUBLE_EQ(stained[0].rate(), 180);
    EXPECT_EQ(rateSightings(sightings, Task::prehungDoor, Conditions())[0].rate(), 120);
    EXPECT_TRUE(rateSightings(sightings, Task::base).empty());
}
