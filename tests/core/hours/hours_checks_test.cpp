// SPDX-License-Identifier: GPL-3.0-or-later
// What is refused of timers, approvals, pay and sold work, each with its sentence.
#include "core/hours/time_kit.h"

#include "basics/quote.h"
#include "hours/hours_checks.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

std::string said(const Result<void>& result) {
    return result ? std::string() : result.error().sentence;
}

TEST(HoursChecks, ATimerRunsForSomebodyFromAMoment) {
    Timer timer;
    EXPECT_EQ(said(checkTimer(timer)), "A timer runs for somebody of the crew.");
    timer.person = lena;
    EXPECT_EQ(said(checkTimer(timer)), "The timer does not say on which day it was started.");
    timer.day = weekday(2);
    EXPECT_EQ(said(checkTimer(timer)), "");
    timer.seconds = -1;
    EXPECT_EQ(said(checkTimer(timer)), "A timer cannot have run for less than no time.");
    timer.seconds = 60;
    timer.started = "half past seven";
    EXPECT_NE(said(checkTimer(timer)), "");
    timer.started = "2026-03-03T07:30:00Z";
    EXPECT_EQ(said(checkTimer(timer)), "");
}

TEST(HoursChecks, AWeekIsApprovedForSomebodyOnADay) {
    WeekApproval approval;
    approval.week = weekday(0);
    approval.person = lena;
    const std::string days
        = "An approved week has a first day, and a day on which it was approved.";
    EXPECT_EQ(said(checkApproval(approval)), days);
    approval.approved = weekday(5);
    EXPECT_EQ(said(checkApproval(approval)), "");
    approval.week = noDate;
    EXPECT_EQ(said(checkApproval(approval)), days);
    approval.week = weekday(0);
    approval.person = {};
    EXPECT_EQ(said(checkApproval(approval)), "A week is approved for somebody of the crew.");
}

TEST(HoursChecks, OvertimeIsPaidAtMoreThanStraightTime) {
    PayTerms terms;
    EXPECT_EQ(said(checkPayTerms(terms)), "");
    terms.overtimeAfter = Hours::whole(169); // a week has 168
    EXPECT_EQ(said(checkPayTerms(terms)), "Overtime begins after 0 to 168 hours a week.");
    terms = {};
    terms.overtimeFactor = Percent::whole(99);
    EXPECT_EQ(said(checkPayTerms(terms)), "Overtime is paid at 100 to 500 % of the straight rate.");
    EXPECT_EQ(said(checkCrewPay({})), "A basis of pay is for somebody of the crew.");
}

TEST(HoursChecks, APieceRateIsOfATaskOfItsWork) {
    PieceRate rate;
    rate.work = PieceOfWork::doors;
    rate.task = Task::prehungDoor;
    EXPECT_EQ(said(checkPieceRate(rate)), "");
    rate.pay = UnitPrice::tenThousandths(-1);
    EXPECT_EQ(said(checkPieceRate(rate)), "A piece rate cannot be below zero.");
    rate.pay = {};
    rate.work = PieceOfWork::base;
    EXPECT_EQ(said(checkPieceRate(rate)),
        capitalised(word(Task::prehungDoor)) + " is no task of "
            + std::string(word(PieceOfWork::base)) + ".");
    rate.task = Task::other;
    EXPECT_EQ(said(checkPieceRate(rate)), "");
}

TEST(HoursChecks, SoldWorkIsNotBelowNothing) {
    EXPECT_EQ(said(checkSoldWork({})), "");
    SoldWork work;
    work.hours = Hours::minutes(-1);
    EXPECT_EQ(said(checkSoldWork(work)), "A bid counts neither hours nor units below zero.");
    SoldTask task;
    task.factor = Percent::hundred();
    EXPECT_EQ(said(checkSoldTask(task)), "");
    task.factor = {};
    EXPECT_EQ(said(checkSoldTask(task)), "A bid counts neither hours nor quantities below zero.");
    WorkDone done;
    done.work = PieceOfWork::doors;
    done.done = Percent::whole(101);
    EXPECT_EQ(said(checkWorkDone(done)), "Doors can be from 0 to 100 % done, not 101 %.");
    done.done = Percent::whole(40);
    EXPECT_EQ(said(checkWorkDone(done)), "");
    done.work = PieceOfWork::extras;
    EXPECT_EQ(said(checkWorkDone(done)), "Each extra is done or not; say so where it is billed.");
}

} // namespace
