// SPDX-License-Identifier: GPL-3.0-or-later
// billed + retained + unbilled = contract + extras at every moment, whatever Edits are done to the
// book in whatever order; and numbers follow each other without a gap.
#include "bill/account.h"
#include "support/billed_house.h"
#include "support/memory_keeper.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

/// Somebody who does billing at random; what is refused leaves no trace.
class RandomBookkeeper {
public:
    explicit RandomBookkeeper(unsigned seed)
        : m_random(seed)
        , m_keeper(billedHouse())
        , m_workbook(Workbook::open(m_keeper).value()) {
        EXPECT_TRUE(m_workbook.openPlan(lot7Plan) && m_workbook.openPlan(Id<Plan>(31)));
    }

    void work() {
        ++m_day;
        static constexpr std::array deeds{&RandomBookkeeper::draw, &RandomBookkeeper::draw,
            &RandomBookkeeper::deposit, &RandomBookkeeper::release, &RandomBookkeeper::voidOne,
            &RandomBookkeeper::creditOne, &RandomBookkeeper::pay, &RandomBookkeeper::addOne,
            &RandomBookkeeper::moveExtra, &RandomBookkeeper::changePrice,
            &RandomBookkeeper::chargeBack, &RandomBookkeeper::undo};
        (this->*deeds.at(upTo(static_cast<int>(deeds.size()) - 1)))();
    }

    void check() const {
        const auto billing = billingOf(book(), lot7);
        ASSERT_TRUE(billing);
        const HouseAccount account = houseAccount(billing->schedule, billing->bills);
        ASSERT_EQ(account.billed + account.retained + account.unbilled, account.value());
        const HouseMoney heads = moneyByHouse(book()).at(lot7);
        ASSERT_EQ(heads.value, account.value());
        ASSERT_EQ(heads.retained, account.retained);
        ASSERT_EQ(heads.work, account.billed + account.retained);
        ASSERT_GE(account.retained, Money());
        int number = 0;
        for (const Bill& bill : billing->bills)
            ASSERT_EQ(bill.invoice.number, ++number);
        ASSERT_EQ(m_keeper.kept(), book());
        for (const Payment& payment : allPayments(book()))
            ASSERT_GE(unallocated(payment, allAllocations(book())), Money());
    }

    std::size_t papers() const { return book().jobs.of<Invoice>().size(); }
    std::size_t voids() const { return book().jobs.of<InvoiceVoid>().size(); }
    std::size_t parts() const { return book().jobs.of<Allocation>().size(); }

private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_random); }
    const Book& book() const { return m_workbook.book(); }
    Date today() const { return marchDay(m_day); }
    IdSource& ids() { return m_workbook.ids(); }

    void perform(const Result<Edit>& edit) {
        if (edit && m_workbook.perform(*edit))
            m_done.push_back(*edit);
    }
    void issueOne(const Result<Bill>& bill) {
        if (bill)
            perform(issueBill(book(), ids(), *bill));
    }
    template <class Row>
    const Row* anyOf() {
        const auto& table = book().jobs.of<Row>();
        if (table.empty())
            return nullptr;
        return &std::next(table.begin(), upTo(static_cast<int>(table.size()) - 1))->second;
    }

    void draw() {
        const auto billing = billingOf(book(), lot7);
        DrawAsk ask{today(), {}, {}, {}};
        for (const ValueLine& line : billing->schedule) {
            if (upTo(2) == 0)
                ask.progress.push_back({line.key, Percent::basisPoints(upTo(10'000))});
            else if (line.key.extra && upTo(1) == 0)
                ask.progress.push_back({line.key, Percent::hundred()});
        }
        if (upTo(3) == 0)
            ask.deposit = Money::cents(upTo(50'000));
        if (const auto* charge = anyOf<Backcharge>(); charge && upTo(3) == 0)
            ask.backcharges = {*charge};
        issueOne(makeDraw(*billing, ask));
    }
    void deposit() {
        issueOne(makeDeposit(*billingOf(book(), lot7), today(), Money::cents(upTo(100'000))));
    }
    void release() {
        issueOne(makeRelease(*billingOf(book(), lot7), today(), Money::cents(upTo(60'000))));
    }
    void voidOne() {
        if (const auto* invoice = anyOf<Invoice>())
            perform(voidInvoice(book(), ids(), invoice->id, today(), "at random"));
    }
    void creditOne() {
        const auto* invoice = anyOf<Invoice>();
        const auto bill = invoice ? findBill(book(), invoice->id) : std::nullopt;
        if (!bill || bill->lines.empty())
            return;
        const InvoiceLine& line = bill->lines.front();
        const auto part = line.amount.cents() * (1 + upTo(9)) / 10;
        issueOne(makeCredit(
            *bill, billsOf(book(), lot7), {{line.id, Money::cents(part)}}, today(), "at random"));
    }
    void pay() {
        perform(recordPayment(
            book(), ids(), {{}, harrow, today(), Money::cents(1 + upTo(400'000)), "check"}));
    }
    void addOne() {
        Extra extra;
        extra.house = lot7;
        extra.title = "Extra";
        extra.price = Money::cents(upTo(80'000) - 20'000);
        perform(addExtra(book(), ids(), extra, {}));
    }
    void moveExtra() {
        const auto* extra = anyOf<Extra>();
        const auto moved = upTo(5) == 0 ? droppedExtra(*extra)
            : lacksApproval(*extra)     ? approvedExtra(*extra, "R. Haas", today())
                                        : doneExtra(*extra, today());
        if (moved)
            perform(putEdit(book(), "Move an extra", *moved));
    }
    void changePrice() {
        Contract contract = *book().contract(lot7);
        auto& value = contract.values.at(static_cast<std::size_t>(upTo(2)));
        value.price = Money::cents(upTo(600'000));
        if (upTo(4) == 0)
            contract.values.erase(contract.values.begin() + upTo(2));
        while (contract.values.size() < 3)
            contract.values.push_back({PieceOfWork::crown, Money::cents(upTo(9'000)), {}});
        perform(putEdit(book(), "Change the contract", contract));
    }
    void chargeBack() {
        perform(putEdit(book(), "Charge back",
            Backcharge{ids().next<Backcharge>(), lot7, today(), "damage",
                Money::cents(1 + upTo(9'000)), BackchargeState::accepted}));
    }
    /// Undo is an Edit like any other: done, or refused because something was issued.
    void undo() {
        if (m_done.empty())
            return;
        if (m_workbook.perform(inverse(m_done.back())))
            ++m_undone;
        m_done.pop_back();
    }

    std::mt19937 m_random;
    MemoryKeeper m_keeper;
    Workbook m_workbook;
    std::vector<Edit> m_done;
    int m_day = 1;
    int m_undone = 0;
};

TEST(BillingLaws, TheAccountAddsUpAtEveryMoment) {
    std::size_t papers = 0;
    std::size_t voids = 0;
    std::size_t parts = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        RandomBookkeeper bookkeeper(seed);
        for (int step = 0; step < 60; ++step) {
            bookkeeper.work();
            bookkeeper.check();
            ASSERT_FALSE(testing::Test::HasFatalFailure()) << "seed " << seed << ", step " << step;
        }
        papers += bookkeeper.papers();
        voids += bookkeeper.voids();
        parts += bookkeeper.parts();
    }
    EXPECT_GT(papers, 300U) << "something is done";
    EXPECT_GT(voids, 20U);
    EXPECT_GT(parts, 50U);
}

} // namespace
} // namespace miterbook
