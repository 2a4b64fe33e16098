// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include "bill/aging.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(AgingBucket, EndsAtThirtySixtyNinety) {
    // [cp] aging buckets 0-30, 31-60, 61-90, over 90.
    EXPECT_EQ(agingBucket(-5), 0U);
    EXPECT_EQ(agingBucket(30), 0U);
    EXPECT_EQ(agingBucket(31), 1U);
    EXPECT_EQ(agingBucket(60), 1U);
    EXPECT_EQ(agingBucket(61), 2U);
    EXPECT_EQ(agingBucket(90), 2U);
    EXPECT_EQ(agingBucket(91), 3U);
}

namespace {

const std::vector bills{plainBill(1, oakRidge, 1, Money::dollars(500)),
    plainBill(2, oakRidge, 60, Money::dollars(300)),
    plainBill(3, hillside, 90, Money::dollars(200))};
const std::vector<Payment> payments{{Id<Payment>(1), hillside, day(95), Money::dollars(250), "88"}};
const std::vector<Allocation> parts{
    {Id<Allocation>(1), Id<Payment>(1), Id<Invoice>(1003), Money::dollars(200)}};

} // namespace

TEST(Aging, SortsWhatIsOwedByAge) {
    auto lines = aging(bills, payments, parts, day(100), AgeFrom::invoiceDate);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].builder, oakRidge);
    EXPECT_EQ(
        lines[0].buckets, (std::array{Money(), Money::dollars(300), Money(), Money::dollars(500)}));
    EXPECT_EQ(lines[1].credit, Money::dollars(50)) << "overpaid";
    EXPECT_EQ(lines[1].owed(), Money::dollars(-50));
    EXPECT_EQ(agingTotal(lines).owed(), Money::dollars(750));

    lines = aging(bills, payments, parts, day(100), AgeFrom::dueDate);
    EXPECT_EQ(
        lines[0].buckets, (std::array{Money::dollars(300), Money(), Money::dollars(500), Money()}));
}

TEST(Aging, LeavesRetainageOut) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 100)}, {}, {}}));
    const auto lines = aging(billing.bills, {}, {}, day(1), AgeFrom::invoiceDate);
    EXPECT_EQ(lines.front().owed(), Money::dollars(3600));
}

TEST(LateBills, AreThosePastTheirDay) {
    const auto late = lateBills(bills, parts, day(100));
    ASSERT_EQ(late.size(), 2U);
    EXPECT_EQ(late[0].bill.number, 1);
    EXPECT_EQ(late[0].daysLate, 69); // due on day 31
    EXPECT_EQ(late[1].daysLate, 10);
    EXPECT_EQ(lateBills(bills, parts, day(100), 11).size(), 1U);
    EXPECT_TRUE(lateBills(bills, parts, day(31)).empty()) << "the day itself is in time";
}
