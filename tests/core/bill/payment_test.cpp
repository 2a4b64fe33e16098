// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include "bill/payment.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

const std::vector bills{plainBill(3, oakRidge, 20, Money::dollars(300)),
    plainBill(1, oakRidge, 1, Money::dollars(500)), plainBill(2, hillside, 2, Money::dollars(200))};

Payment payment(Money amount, int id = 1) {
    return {Id<Payment>(id), oakRidge, day(40), amount, "1077"};
}

std::string refusal(
    const Allocation& wanted, const Payment& from, const std::vector<Allocation>& there = {}) {
    const auto checked = checkAllocation(wanted, from, bills, there);
    return checked ? std::string() : checked.error().sentence;
}

} // namespace

TEST(Allocation, PaysTheOldestFirst) {
    IdSource ids;
    const auto parts = allocateOldestFirst(payment(Money::dollars(600)), bills, {}, ids);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts[0].invoice, Id<Invoice>(1001));
    EXPECT_EQ(parts[0].amount, Money::dollars(500));
    EXPECT_EQ(parts[1].invoice, Id<Invoice>(1003));
    EXPECT_EQ(parts[1].amount, Money::dollars(100)) << "a part payment";
    const auto open = openBills(bills, parts);
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[0].number, 2);
    EXPECT_EQ(open[1].open(), Money::dollars(200));
}

TEST(Allocation, LeavesAnOverpaymentWithTheBuilder) {
    IdSource ids;
    const Payment much = payment(Money::dollars(1000));
    auto parts = allocateOldestFirst(much, bills, {}, ids);
    EXPECT_EQ(unallocated(much, parts), Money::dollars(200));
    EXPECT_TRUE(allocateOldestFirst(much, bills, parts, ids).empty()) << "nothing of his is open";
    auto later = bills;
    later.push_back(plainBill(4, oakRidge, 50, Money::dollars(150)));
    const auto more = allocateOldestFirst(much, later, parts, ids);
    ASSERT_EQ(more.size(), 1U);
    EXPECT_EQ(more[0].amount, Money::dollars(150));
}

TEST(OpenBills, TakeCreditNotesAndVoidsIn) {
    auto all = bills;
    Bill note = plainBill(4, oakRidge, 25, Money::dollars(-120));
    note.invoice.kind = InvoiceKind::credit;
    note.invoice.credits = Id<Invoice>(1003);
    all.push_back(note);
    all[1].voided = InvoiceVoid{Id<InvoiceVoid>(9), Id<Invoice>(1001), day(3), "wrong lot"};
    const auto open = openBills(all, {});
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[0].number, 2);
    EXPECT_EQ(open[1].open(), Money::dollars(180));
}

TEST(Allocation, IsCheckedAgainstBothSides) {
    const Payment from = payment(Money::dollars(400));
    const auto part = [](int invoice, int dollars) {
        return Allocation{
            Id<Allocation>(1), Id<Payment>(1), Id<Invoice>(invoice), Money::dollars(dollars)};
    };
    EXPECT_EQ(refusal(part(1001, 400), from), "");
    EXPECT_EQ(refusal(part(1001, 401), from), "Only 400.00 of the payment is left.");
    EXPECT_EQ(
        refusal(part(1001, 300), from, {part(1003, 150)}), "Only 250.00 of the payment is left.");
    EXPECT_EQ(refusal(part(1003, 301), from),
        "Only 300.00 is open on invoice 3; the rest stays with the builder.");
    EXPECT_EQ(refusal(part(1002, 10), from), "Invoice 2 is another builder's.");
    EXPECT_EQ(refusal(part(1099, 10), from), "Nothing is open on that invoice.");
    EXPECT_EQ(refusal(part(1001, 0), from), "Say how much of the payment goes to the invoice.");
}
