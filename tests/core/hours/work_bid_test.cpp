// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/work_bid.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

EstimateLine lineOf(PieceOfWork work, Task task, int quantity) {
    EstimateLine line;
    line.work = work;
    line.task = task;
    line.quantity = Quantity::count(quantity);
    return line;
}

} // namespace

TEST(WorkBids, CountWhatFinishesAPieceOfWork) {
    Estimate estimate;
    estimate.lines = {lineOf(PieceOfWork::windows, Task::pictureFrameWindow, 9),
        lineOf(PieceOfWork::windows, Task::stoolAndApronWindow, 2),
        lineOf(PieceOfWork::windows, Task::jambExtension, 4),
        lineOf(PieceOfWork::base, Task::base, 420), lineOf(PieceOfWork::base, Task::shoe, 300)};
    WorkTotal windows;
    windows.work = PieceOfWork::windows;
    windows.hours = Hours::whole(7);
    windows.labour = Money::dollars(300);
    windows.material = Money::dollars(150);
    windows.profit = Money::dollars(50);
    windows.price = Money::dollars(500);
    WorkTotal base;
    base.work = PieceOfWork::base;
    estimate.works = {windows, base};

    const auto bids = workBids(estimate);
    ASSERT_EQ(bids.size(), 2U);
    EXPECT_EQ(bids[0],
        (WorkBid{PieceOfWork::windows, Hours::whole(7), Money::dollars(300), Quantity::count(11),
            Money::dollars(450), Money::dollars(500)}));
    EXPECT_EQ(bids[1].units, Quantity::count(420));
}

TEST(WorkBids, KeepTheCrewRateThatTheyWereReckonedWith) {
    WorkBid doors;
    doors.hours = Hours::whole(10);
    doors.labour = Money::dollars(480);
    WorkBid base;
    base.hours = Hours::minutes(90);
    base.labour = Money::dollars(72);
    EXPECT_EQ(crewRateIn({doors, base}), Money::dollars(48)) << "552 for 11.5 hours [calc]";
    EXPECT_EQ(crewRateIn({}), Money());
    EXPECT_EQ(crewRateIn({WorkBid()}), Money()) << "no hours to divide by";
}
