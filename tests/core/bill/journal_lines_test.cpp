// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include "bill/journal_lines.h"
#include "bill/take_back.h"

#include <gtest/gtest.h>

#include <map>

using namespace miterbook;

namespace {

Billing year() {
    Billing billing = tenThousand();
    billing.contract.tax = Percent::basisPoints(725);
    issue(billing, makeDeposit(billing, day(1), Money::dollars(500)));
    const Backcharge tile{Id<Backcharge>(1), lot7, day(1), "cracked tile", Money::dollars(120),
        BackchargeState::accepted};
    issue(billing,
        makeDraw(billing, {day(5), {toDate(PieceOfWork::doors, 77)}, {tile}, Money::dollars(500)}));
    const Bill draw = billing.bills.back();
    issue(billing,
        makeCredit(
            draw, billing.bills, {{draw.lines[0].id, Money::dollars(77)}}, day(6), "door 9"));
    issue(billing, makeRelease(billing, day(40), Money::dollars(100)));
    billing.bills.back().voided = InvoiceVoid{
        Id<InvoiceVoid>(1), billing.bills.back().invoice.id, day(41), "too early"};
    return billing;
}

const std::vector<Payment> payments{
    {Id<Payment>(1), oakRidge, day(30), Money::dollars(1000), "1077"}};

} // namespace

TEST(JournalLines, BalanceDocumentByDocument) {
    const auto lines = journalLines(year().bills, payments, day(1), day(100));
    std::map<std::pair<Date, std::string>, Money> sums;
    for (const JournalLine& line : lines) {
        EXPECT_GE(line.debit, Money());
        EXPECT_GE(line.credit, Money());
        EXPECT_NE(line.debit == Money(), line.credit == Money());
        sums[{line.date, line.document}] += line.debit - line.credit;
    }
    EXPECT_EQ(sums.size(), 6U);
    for (const auto& [document, sum] : sums)
        EXPECT_EQ(sum, Money()) << document.second;
}

TEST(JournalLines, OfADraw) {
    const Billing billing = year();
    const auto lines = journalLines(billing.bills, {}, day(5), day(5));
    ASSERT_EQ(lines.size(), 6U);
    // [calc] 3,080 of work, 308 retained, 223.30 tax, 120 backcharge, 500 of deposit used up.
    EXPECT_EQ(lines[0].account, "Accounts receivable");
    EXPECT_EQ(lines[0].document, "Invoice 0002");
    EXPECT_EQ(lines[0].debit, Money::cents(308'000 - 30'800 + 22'330 - 12'000 - 50'000));
    EXPECT_EQ(lines[1].debit, Money::dollars(308));
    EXPECT_EQ(lines[2].debit, Money::dollars(120));
    EXPECT_EQ(lines[3].account, "Customer deposits");
    EXPECT_EQ(lines[3].debit, Money::dollars(500));
    EXPECT_EQ(lines[4].credit, Money::dollars(3080));
    EXPECT_EQ(lines[5].credit, Money::cents(22'330));
}

TEST(JournalLines, TakeAVoidBackOnItsDay) {
    const Billing billing = year();
    const auto lines = journalLines(billing.bills, {}, day(41), day(41));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].document, "Retainage invoice 0004 voided");
    EXPECT_EQ(lines[0].credit, Money::dollars(100));
    EXPECT_EQ(lines[0].memo, "too early");
    EXPECT_EQ(lines[1].account, "Retainage receivable");
    EXPECT_EQ(lines[1].debit, Money::dollars(100));
}
