// SPDX-License-Identifier: GPL-3.0-or-later
// Voids and credit notes.
#include "core/bill/bill_kit.h"

#include "bill/take_back.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Billing billed(int percent) {
    Billing billing = tenThousand();
    billing.contract.tax = Percent::whole(5);
    issue(billing,
        makeDraw(billing,
            {day(1), {toDate(PieceOfWork::doors, percent), toDate(PieceOfWork::base, percent)}, {},
                {}}));
    return billing;
}

std::string whyNoVoid(
    const Billing& billing, std::size_t index, const std::vector<Allocation>& allocations = {}) {
    const auto checked = checkVoid(billing.bills.at(index), billing.bills, allocations);
    return checked ? std::string() : checked.error().sentence;
}

Result<Bill> creditOf(const Billing& billing, std::size_t line, Money amount) {
    const Bill& draw = billing.bills.front();
    return makeCredit(
        draw, billing.bills, {{draw.lines.at(line).id, amount}}, day(5), "counted twice");
}

} // namespace

TEST(Credit, TakesWorkRetainageAndTaxBackInProportion) {
    Billing billing = billed(50); // 2,000 + 1,250; retained 325, tax 162.50
    const auto note = creditOf(billing, 0, Money::dollars(500));
    ASSERT_TRUE(note);
    EXPECT_EQ(note->work(), Money::dollars(-500));
    EXPECT_EQ(note->invoice.retained, Money::dollars(-50));
    EXPECT_EQ(note->invoice.tax, Money::dollars(-25));
    EXPECT_EQ(note->total(), Money::dollars(-500 + 50 - 25));
    EXPECT_EQ(note->invoice.credits, billing.bills.front().invoice.id);
    EXPECT_EQ(note->invoice.note, "counted twice");
}

TEST(Credit, OfEverythingLeavesNothing) {
    Billing billing = billed(33);
    for (const auto& [line, amount] : {std::pair{0, Money::cents(33'333)},
             std::pair{0, Money::cents(98'667)}, std::pair{1, Money::cents(82'500)}})
        issue(billing, creditOf(billing, static_cast<std::size_t>(line), amount));
    Money total;
    for (const Bill& bill : billing.bills)
        total += bill.total();
    EXPECT_EQ(total, Money()) << "no cent of retainage or tax is left over";
    EXPECT_EQ(retainedOf(billing.bills), Money());
    EXPECT_EQ(houseAccount(billing.schedule, billing.bills).unbilled, Money::dollars(10'000));
}

TEST(Credit, RefusesMoreThanIsThere) {
    Billing billing = billed(50);
    issue(billing, creditOf(billing, 0, Money::dollars(1500)));
    EXPECT_EQ(creditOf(billing, 0, Money::dollars(501)).error().sentence,
        "\"doors\" still bills 500.00; no other than a part of that can be taken back.");
    EXPECT_FALSE(creditOf(billing, 0, Money()));
    EXPECT_FALSE(creditOf(billing, 0, Money::dollars(-1)));
    const Bill& draw = billing.bills.front();
    EXPECT_FALSE(makeCredit(draw, billing.bills, {}, day(5), "slip"));
    EXPECT_FALSE(
        makeCredit(draw, billing.bills, {{draw.lines[1].id, Money::dollars(1)}}, day(5), " "));
    EXPECT_FALSE(
        makeCredit(draw, billing.bills, {{Id<InvoiceLine>(1), Money::dollars(1)}}, day(5), "slip"));
    EXPECT_FALSE(makeCredit(billing.bills.back(), billing.bills,
        {{billing.bills.back().lines[0].id, Money::dollars(1)}}, day(5), "credit of a credit"));
}

TEST(Credit, GivesNoRetainageBackThatWasReleased) {
    Billing billing = billed(50);
    issue(billing, makeRelease(billing, day(3), Money::dollars(325)));
    EXPECT_EQ(creditOf(billing, 0, Money::dollars(500))->invoice.retained, Money());
}

TEST(Void, IsRefusedOnceSomethingFollowed) {
    Billing billing = billed(50);
    EXPECT_EQ(whyNoVoid(billing, 0), "");
    const Allocation paid{
        Id<Allocation>(1), Id<Payment>(1), billing.bills[0].invoice.id, Money::dollars(1)};
    EXPECT_EQ(whyNoVoid(billing, 0, {paid}),
        "Number 1 cannot be voided: something is paid on it; issue a credit note.");
    issue(billing, makeRelease(billing, day(3), Money::dollars(1)));
    EXPECT_EQ(
        whyNoVoid(billing, 0), "Number 1 cannot be voided: its retainage has been released since.");
    billing.bills[1].voided = InvoiceVoid{};
    EXPECT_EQ(whyNoVoid(billing, 0), "");
    EXPECT_EQ(whyNoVoid(billing, 1), "Number 2 cannot be voided: it has been voided already.");
    issue(billing, creditOf(billing, 0, Money::dollars(10)));
    EXPECT_EQ(
        whyNoVoid(billing, 0), "Number 1 cannot be voided: a credit note takes it back already.");
}

TEST(Void, OfAPaidDepositSaysWhatCanBeDone) {
    Billing billing = tenThousand();
    issue(billing, makeDeposit(billing, day(1), Money::dollars(500)));
    const Allocation paid{
        Id<Allocation>(1), Id<Payment>(1), billing.bills[0].invoice.id, Money::dollars(500)};
    EXPECT_EQ(whyNoVoid(billing, 0, {paid}),
        "Number 1 cannot be voided: something is paid on it; remove the payment first.")
        << "no credit note is made for a deposit";
}

TEST(Void, KeepsDepositsAndWorkBilledAgain) {
    Billing billing = tenThousand();
    issue(billing, makeDeposit(billing, day(1), Money::dollars(500)));
    issue(billing,
        makeDraw(billing, {day(2), {toDate(PieceOfWork::doors, 50)}, {}, Money::dollars(200)}));
    EXPECT_EQ(
        whyNoVoid(billing, 0), "Number 1 cannot be voided: its deposit has been used up since.");

    billing = billed(100);
    issue(billing, creditOf(billing, 0, Money::dollars(4000)));
    EXPECT_EQ(whyNoVoid(billing, 1), "");
    issue(billing, makeDraw(billing, {day(6), {toDate(PieceOfWork::doors, 100)}, {}, {}}));
    EXPECT_EQ(whyNoVoid(billing, 1),
        "Number 2 cannot be voided: what it takes back has been billed again.");
}
