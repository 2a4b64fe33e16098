// SPDX-License-Identifier: GPL-3.0-or-later
// What the crew gets for a week.
#include "core/hours/time_kit.h"

#include "hours/pay_sheet.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

PayRules rulesFor(Money wage, PayBasis basis) {
    PayRules rules;
    rules.crew = {{lena, "Lena", wage, true}};
    rules.bases = {{Id<CrewPay>(1), lena, basis}};
    return rules;
}

/// Hours of doors over the week's days, in days of at most 10 hours.
std::vector<TimeEntry> doorHours(int hours, int doors = 0) {
    std::vector<TimeEntry> entries;
    for (int day = 0; hours > 0; ++day, hours -= 10)
        entries.push_back(timeAt(day, lena, PieceOfWork::doors, Hours::whole(std::min(hours, 10))));
    for (TimeEntry& entry : entries)
        entry.done = Quantity::thousandths(doors * 1000 / static_cast<int>(entries.size()));
    return entries;
}

} // namespace

TEST(PaySheet, ByTheHourWithTimeAndAHalf) {
    // [mem: 29 CFR 778.110(a)] 46 hours at $12: 588; [calc] 46 x 12 + 6 x 6.
    const PaySheet sheet = paySheet(
        doorHours(46), weekday(0), rulesFor(Money::dollars(12), PayBasis::hourly));
    ASSERT_EQ(sheet.lines.size(), 1U);
    EXPECT_EQ(sheet.lines[0].overtime, Hours::whole(6));
    EXPECT_EQ(sheet.lines[0].wages, Money::dollars(552));
    EXPECT_EQ(sheet.lines[0].extra, Money::dollars(36));
    EXPECT_EQ(sheet.total, Money::dollars(588));
    EXPECT_TRUE(sheet.problems.empty());
}

TEST(PaySheet, ByThePieceWithHalfTimeExtra) {
    // [mem: 29 CFR 778.111(a)] $491 for 46 hours of piece work and 4 hours of waiting at $8: 523
    // over 50 hours is 10.46 an hour; 10 hours at 5.23 more: 575.30. [calc] the same.
    PayRules rules = rulesFor(Money::dollars(8), PayBasis::piece);
    rules.rates = {{Id<PieceRate>(1), {}, PieceOfWork::doors, Task::other, UnitPrice::cents(4910)}};
    std::vector<TimeEntry> entries = doorHours(46, 10);
    entries.push_back(timeAt(5, lena, PieceOfWork::doors, Hours::whole(4), {}, TimeKind::waiting));
    const PaySheet sheet = paySheet(entries, weekday(0), rules);
    ASSERT_EQ(sheet.lines.size(), 1U);
    const PayLine& line = sheet.lines[0];
    EXPECT_EQ(line.time, Hours::whole(50)) << "hours are kept all the same";
    EXPECT_EQ(line.piecePay, Money::dollars(491));
    EXPECT_EQ(line.wages, Money::dollars(32));
    EXPECT_EQ(line.extra, Money::cents(5230));
    EXPECT_EQ(line.total(), Money::cents(57530));

    rules.terms.overtimeOnPieces = false;
    EXPECT_EQ(paySheet(entries, weekday(0), rules).total, Money::dollars(523));
}

TEST(PaySheet, TakesLimitAndFactorFromTheTerms) {
    PayRules rules = rulesFor(Money::dollars(20), PayBasis::hourly);
    rules.terms.overtimeAfter = Hours::whole(36);
    rules.terms.overtimeFactor = Percent::whole(200);
    EXPECT_EQ(paySheet(doorHours(40), weekday(0), rules).total, Money::dollars(880)); // [calc]
    EXPECT_EQ(paySheet(doorHours(36), weekday(0), rules).total, Money::dollars(720));
}

TEST(PaySheet, GathersPiecesByRateAndRoundsOnce) {
    PayRules rules = rulesFor(Money::dollars(20), PayBasis::piece);
    rules.rates = {
        {Id<PieceRate>(1), {}, PieceOfWork::base, Task::other, UnitPrice::tenThousandths(3333)}};
    const PaySheet sheet = paySheet(
        {timeAt(0, lena, PieceOfWork::base, Hours::whole(4), Quantity::thousandths(100'500)),
            timeAt(1, lena, PieceOfWork::base, Hours::whole(4), Quantity::thousandths(100'500))},
        weekday(0), rules);
    ASSERT_EQ(sheet.lines[0].pieces.size(), 1U);
    EXPECT_EQ(sheet.lines[0].pieces[0].done, Quantity::count(201));
    EXPECT_EQ(sheet.lines[0].piecePay, Money::cents(6699)); // 201 x .3333 = 66.9933
}

TEST(PaySheet, PrefersThePersonsOwnRate) {
    const PieceRate everybody{
        Id<PieceRate>(1), {}, PieceOfWork::doors, Task::other, UnitPrice::cents(100)};
    const PieceRate own{
        Id<PieceRate>(2), lena, PieceOfWork::doors, Task::other, UnitPrice::cents(200)};
    const TimeEntry entry = timeAt(0, lena, PieceOfWork::doors, Hours::whole(1));
    EXPECT_EQ(rateFor({everybody, own}, entry)->pay, UnitPrice::cents(200));
    EXPECT_EQ(rateFor({own, everybody}, entry)->pay, UnitPrice::cents(200));
    TimeEntry other = entry;
    other.person = omar;
    EXPECT_EQ(rateFor({own, everybody}, other)->pay, UnitPrice::cents(100));
    other.task = Task::pocketDoor;
    EXPECT_EQ(rateFor({own, everybody}, other), nullptr);
}

TEST(PaySheet, SaysWhatItCannotPay) {
    PayRules rules = rulesFor(Money::dollars(20), PayBasis::piece);
    const PaySheet sheet = paySheet(
        {timeAt(0, lena, PieceOfWork::doors, Hours::whole(4)),
            timeAt(1, lena, PieceOfWork::base, Hours::whole(4), Quantity::count(90)),
            timeAt(1, omar, PieceOfWork::base, Hours::whole(4))},
        weekday(0), rules);
    ASSERT_EQ(sheet.problems.size(), 3U);
    EXPECT_EQ(sheet.problems[0],
        "Lena works by the piece, but nothing finished is said for doors "
        "on 2026-03-02.");
    EXPECT_EQ(
        sheet.problems[1], "There is no piece rate for base, which Lena finished on 2026-03-03.");
    EXPECT_EQ(sheet.problems[2], "There are hours of somebody who is not in the crew.");
}
