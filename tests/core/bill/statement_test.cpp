// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include "bill/statement.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

std::vector<Bill> papers() {
    std::vector bills{plainBill(1, oakRidge, 1, Money::dollars(500)),
        plainBill(2, oakRidge, 40, Money::dollars(300)),
        plainBill(3, oakRidge, 41, Money::dollars(90)),
        plainBill(4, hillside, 41, Money::dollars(777))};
    bills[2].voided = InvoiceVoid{Id<InvoiceVoid>(9), bills[2].invoice.id, day(70), "wrong lot"};
    return bills;
}

const std::vector<Payment> payments{
    {Id<Payment>(1), oakRidge, day(35), Money::dollars(200), "1077"},
    {Id<Payment>(2), oakRidge, day(75), Money::dollars(100), "1080"}};
const std::vector<Allocation> parts{
    {Id<Allocation>(1), Id<Payment>(1), Id<Invoice>(1001), Money::dollars(200)},
    {Id<Allocation>(2), Id<Payment>(2), Id<Invoice>(1001), Money::dollars(100)}};

} // namespace

TEST(Statement, RunsFromTheOpeningBalance) {
    const AccountStatement statement = statementFor(
        oakRidge, day(32), day(80), papers(), payments, parts, AgeFrom::invoiceDate);
    EXPECT_EQ(statement.opening, Money::dollars(500));
    ASSERT_EQ(statement.lines.size(), 5U);
    EXPECT_EQ(statement.lines[0].text, "Payment 1077");
    EXPECT_EQ(statement.lines[0].balance, Money::dollars(300));
    EXPECT_EQ(statement.lines[1].text, "Invoice 0002");
    EXPECT_EQ(statement.lines[2].balance, Money::dollars(690));
    EXPECT_EQ(statement.lines[3].text, "Invoice 0003 voided");
    EXPECT_EQ(statement.lines[3].charge, Money::dollars(-90));
    EXPECT_EQ(statement.closing, Money::dollars(500));
    EXPECT_EQ(statement.ages.owed(), statement.closing);
    EXPECT_EQ(statement.ages.buckets[2], Money::dollars(200)); // invoice 1, 79 days
    EXPECT_EQ(statement.ages.buckets[1], Money::dollars(300)); // invoice 2, 40 days
}

TEST(Statement, StandsAsItStoodThen) {
    const AccountStatement statement = statementFor(
        oakRidge, day(32), day(60), papers(), payments, parts, AgeFrom::invoiceDate);
    EXPECT_EQ(statement.closing, Money::dollars(690)) << "the void and a payment came later";
    EXPECT_EQ(statement.ages.owed(), Money::dollars(690));
    EXPECT_EQ(statement.lines.size(), 3U);
}

TEST(Statement, SaysWhatIsHeldBack) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 100)}, {}, {}}));
    const AccountStatement statement = statementFor(
        oakRidge, day(1), day(9), billing.bills, {}, {}, AgeFrom::invoiceDate);
    EXPECT_EQ(statement.closing, Money::dollars(3600));
    EXPECT_EQ(statement.retained, Money::dollars(400));
}
