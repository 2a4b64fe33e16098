// SPDX-License-Identifier: GPL-3.0-or-later
// billed + retained + unbilled = contract + extras at every moment, whatever is issued, voided,
// credited or paid, in any order.
#include "core/bill/bill_kit.h"

#include "bill/invoice_number.h"
#include "bill/journal_lines.h"
#include "bill/statement.h"
#include "bill/take_back.h"

#include <gtest/gtest.h>

#include <random>

using namespace miterbook;

namespace {

/// A shop that does something at random each day, and refuses what it must.
class RandomShop {
public:
    explicit RandomShop(unsigned seed)
        : m_random(seed) {
        m_billing = tenThousand();
        m_billing.contract.retainage = Percent::basisPoints(upTo(1500));
        m_billing.contract.tax = Percent::basisPoints(upTo(999));
        for (ValueLine& line : m_billing.schedule)
            line.amount = Money::cents(1 + upTo(500'000));
    }

    void live() {
        ++m_day;
        switch (upTo(8)) {
        case 0:
            return agreeExtra();
        case 1:
            return add(makeDeposit(m_billing, day(m_day), Money::cents(upTo(100'000))));
        case 2:
            return add(makeRelease(m_billing, day(m_day), Money::cents(upTo(60'000))));
        case 3:
            return voidOne();
        case 4:
            return creditOne();
        case 5:
            return pay();
        default:
            return draw();
        }
    }

    void check() const {
        const HouseAccount account = houseAccount(m_billing.schedule, m_billing.bills);
        ASSERT_EQ(account.billed + account.retained + account.unbilled, account.value());
        ASSERT_EQ(account.value(), valueOf(m_billing.schedule));
        ASSERT_GE(account.retained, Money());
        ASSERT_GE(account.deposit, Money());
        const auto billed = billedByLine(m_billing.bills);
        for (const ValueLine& line : m_billing.schedule) {
            if (const auto found = billed.find(line.key); found != billed.end()) {
                ASSERT_LE(std::abs(found->second.cents()), std::abs(line.amount.cents()));
            }
        }
        checkOwed();
    }

    std::size_t papers() const { return m_billing.bills.size(); }
    std::size_t paid() const { return m_parts.size(); }

private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_random); }

    void add(const Result<Bill>& bill) {
        if (!bill)
            return;
        std::vector<int> issued;
        for (const Bill& each : m_billing.bills)
            issued.push_back(each.invoice.number);
        m_billing.bills.push_back(numbered(*bill, *nextInvoiceNumber(issued), m_ids));
    }
    void agreeExtra() {
        m_billing.schedule.push_back({{PieceOfWork::extras, m_ids.next<Extra>()}, "extra",
            Money::cents(upTo(80'000) - 20'000)});
    }
    void draw() {
        DrawAsk ask{day(m_day), {}, {}, {}};
        for (const ValueLine& line : m_billing.schedule) {
            if (upTo(2) == 0)
                ask.progress.push_back({line.key, Percent::basisPoints(upTo(10'000))});
        }
        if (upTo(3) == 0)
            ask.deposit = Money::cents(upTo(50'000));
        if (upTo(4) == 0)
            ask.backcharges = {{m_ids.next<Backcharge>(), lot7, day(m_day), "damage",
                Money::cents(1 + upTo(9'000)), BackchargeState::accepted}};
        add(makeDraw(m_billing, ask));
    }
    Bill* anyBill() {
        if (m_billing.bills.empty())
            return nullptr;
        return &m_billing.bills.at(
            static_cast<std::size_t>(upTo(static_cast<int>(m_billing.bills.size()) - 1)));
    }
    void voidOne() {
        Bill* bill = anyBill();
        if (bill && checkVoid(*bill, m_billing.bills, m_parts))
            bill->voided = InvoiceVoid{
                m_ids.next<InvoiceVoid>(), bill->invoice.id, day(m_day), "at random"};
    }
    void creditOne() {
        const Bill* bill = anyBill();
        if (!bill || bill->lines.empty())
            return;
        const InvoiceLine& line = bill->lines.front();
        const auto part = line.amount.cents() * (1 + upTo(9)) / 10;
        add(makeCredit(
            *bill, m_billing.bills, {{line.id, Money::cents(part)}}, day(m_day), "at random"));
    }
    void pay() {
        const Payment payment{
            m_ids.next<Payment>(), oakRidge, day(m_day), Money::cents(1 + upTo(400'000)), "check"};
        m_payments.push_back(payment);
        for (const Allocation& part :
            allocateOldestFirst(payment, m_billing.bills, m_parts, m_ids)) {
            ASSERT_TRUE(checkAllocation(part, payment, m_billing.bills, m_parts));
            m_parts.push_back(part);
        }
    }
    /// Aging, statement and ledger agree on what is owed.
    void checkOwed() const {
        Money owed;
        for (const Bill& bill : m_billing.bills)
            owed += bill.counts() ? bill.total() : Money();
        for (const Payment& payment : m_payments)
            owed -= payment.amount;
        const auto lines = aging(
            m_billing.bills, m_payments, m_parts, day(m_day), AgeFrom::invoiceDate);
        ASSERT_EQ(agingTotal(lines).owed(), owed);
        ASSERT_EQ(statementFor(oakRidge, day(1), day(m_day), m_billing.bills, m_payments, m_parts,
                      AgeFrom::invoiceDate)
                      .closing,
            owed);
        Money receivable;
        for (const JournalLine& line :
            journalLines(m_billing.bills, m_payments, day(1), day(m_day))) {
            if (line.account == LedgerAccounts().receivable)
                receivable += line.debit - line.credit;
        }
        ASSERT_EQ(receivable, owed);
    }

    std::mt19937 m_random;
    Billing m_billing;
    std::vector<Payment> m_payments;
    std::vector<Allocation> m_parts;
    IdSource m_ids{100};
    int m_day = 1;
};

} // namespace

TEST(HouseAccount, AddsUpAtEveryMoment) {
    std::size_t papers = 0;
    std::size_t paid = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        RandomShop shop(seed);
        for (int step = 0; step < 60; ++step) {
            shop.live();
            shop.check();
            ASSERT_FALSE(HasFatalFailure()) << "seed " << seed << ", step " << step;
        }
        papers += shop.papers();
        paid += shop.paid();
    }
    EXPECT_GT(papers, 2000U) << "the shops do something";
    EXPECT_GT(paid, 500U);
}
