// SPDX-License-Identifier: GPL-3.0-or-later
// The invented year has money in it that adds up, and all that the screens want to show.
#include "app/batch_run.h"
#include "batch/opened_book.h"
#include "batch/sample_diary.h"
#include "batch/sample_house.h"
#include "bill/draw.h"
#include "job/bills.h"
#include "job/house_review.h"
#include "job/schedule.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <optional>
#include <set>

namespace miterbook {
namespace {

constexpr Date endOfYear{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

/// A sample year, made once for all cases: they only look.
class SampleBills : public testing::Test {
protected:
    static void SetUpTestSuite() {
        s_folder = std::make_unique<QTemporaryDir>();
        s_book.emplace(make(path("shop"), "14"));
    }
    static void TearDownTestSuite() {
        s_book.reset();
        s_folder.reset();
    }
    static std::string path(const char* name) {
        return s_folder->filePath(QString::fromLatin1(name) + QStringLiteral(".miterbook"))
            .toStdString();
    }
    static OpenedBook make(const std::string& path, const char* houses) {
        EXPECT_EQ(runBatch({"new", path}).status, 0);
        for (const char* plan :
            {"larkspur/larkspur.miterplan", "wren/wren.miterplan", "ravine/ravine.miterplan"})
            EXPECT_EQ(runBatch({"bring", path, sampleFile(plan)}).status, 0);
        const BatchRun run = runBatch({"sample", path, "--date", "2026-11-25", "--houses", houses});
        EXPECT_EQ(run.status, 0) << run.err;
        auto opened = openWorkbook(path, OpenMode::look);
        EXPECT_TRUE(opened.ok());
        for (const auto& [id, house] : opened->book().jobs.of<House>())
            EXPECT_TRUE(opened->workbook.openPlan(house.work).ok());
        return std::move(*opened);
    }
    static const Book& book() { return s_book->book(); }
    static std::vector<Invoice> invoices() {
        std::vector<Invoice> all;
        for (const auto& [id, invoice] : book().jobs.of<Invoice>())
            all.push_back(invoice);
        std::ranges::sort(all, {}, &Invoice::number);
        return all;
    }
    template <class Row, class Test>
    static std::ptrdiff_t count(Test test) {
        return std::ranges::count_if(
            book().jobs.of<Row>(), [&](const auto& entry) { return test(entry.second); });
    }

    static std::unique_ptr<QTemporaryDir> s_folder;
    static std::optional<OpenedBook> s_book;
};

std::unique_ptr<QTemporaryDir> SampleBills::s_folder;
std::optional<OpenedBook> SampleBills::s_book;

TEST_F(SampleBills, OfEachHouseAddUpToContractAndExtras) {
    int houses = 0;
    for (const auto& [id, house] : book().jobs.of<House>()) {
        const auto billing = billingOf(book(), id);
        ASSERT_TRUE(billing.ok()) << house.name;
        const HouseAccount account = houseAccount(billing->schedule, billing->bills);
        EXPECT_EQ(
            account.billed + account.retained + account.unbilled, account.contract + account.extras)
            << house.name;
        EXPECT_EQ(account.deposit, Money()) << house.name << ": what was paid ahead is used up";
        EXPECT_GT(account.contract, Money()) << house.name;
        ++houses;
    }
    EXPECT_EQ(houses, 16);
}

TEST_F(SampleBills, GoByWhatADrawOfASmallHouseBrings) {
    const std::string alone = path("alone");
    ASSERT_EQ(runBatch({"new", alone}).status, 0);
    ASSERT_EQ(runBatch({"bring", alone, sampleFile("wren/wren.miterplan")}).status, 0);
    const BatchRun run = runBatch({"sample", alone, "--date", "2026-11-25", "--houses", "3"});
    EXPECT_EQ(run.status, 0) << run.err;
}

TEST_F(SampleBills, ContractsAreTheBidsThatWereWon) {
    for (const auto& [id, contract] : book().jobs.of<Contract>()) {
        Money price;
        for (const WorkBid& bid : book().soldBid(book().house(contract.house)->work))
            price += bid.price;
        EXPECT_EQ(valueOf(scheduleOfValues(contract.values, {})), price);
        EXPECT_TRUE(contract.date.ok());
        EXPECT_FALSE(contract.purchaseOrder.empty());
    }
    for (const DrawBy way : {DrawBy::work, DrawBy::stage, DrawBy::completion})
        EXPECT_GT(count<Contract>([&](const Contract& c) { return c.drawBy == way; }), 0)
            << word(way);
}

TEST_F(SampleBills, AreNumberedWithoutGapsInTheOrderOfTheirDays) {
    const auto all = invoices();
    ASSERT_GT(all.size(), 20U);
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(all[i].number, static_cast<int>(i) + 1);
        EXPECT_LE(all[i == 0 ? 0 : i - 1].date, all[i].date) << all[i].number;
        EXPECT_LE(all[i].date, endOfYear);
    }
}

TEST_F(SampleBills, ShowEveryKindOfExtra) {
    using enum ExtraState;
    const auto in = [](ExtraState state) {
        return count<Extra>([&](const Extra& extra) { return extra.state == state; });
    };
    EXPECT_GT(in(billed), 3);
    EXPECT_GT(in(dropped), 0);
    EXPECT_GT(in(priced), 0) << "one that nobody has said yes to";
    const auto notApproved = count<Extra>([](const Extra& extra) {
        return lacksApproval(extra) && !isFinished(*book().house(extra.house));
    });
    EXPECT_GT(notApproved, 0) << "on a house that is underway";
    EXPECT_GT(count<Extra>([](const Extra& extra) { return extra.material > Money(); }), 5);
}

TEST_F(SampleBills, BilledExtrasHaveTheirHours) {
    for (const auto& [id, extra] : book().jobs.of<Extra>()) {
        if (extra.state != ExtraState::billed)
            continue;
        const HouseResult result = resultOf(book(), *book().house(extra.house));
        const WorkResult* work = result.of(PieceOfWork::extras);
        ASSERT_NE(work, nullptr) << extra.title;
        EXPECT_GT(work->used, Hours()) << extra.title;
        EXPECT_GT(work->cost, extra.material) << extra.title;
        EXPECT_GE(extra.approved, extra.asked);
        EXPECT_GE(extra.done, extra.approved);
    }
}

TEST_F(SampleBills, ShowEveryKindOfBill) {
    using enum InvoiceKind;
    const auto of = [](InvoiceKind kind) {
        return count<Invoice>([&](const Invoice& invoice) { return invoice.kind == kind; });
    };
    EXPECT_GT(of(draw), 15);
    EXPECT_EQ(of(deposit), 1);
    EXPECT_GT(of(release), 3);
    EXPECT_EQ(book().jobs.of<InvoiceVoid>().size(), 1U);
    EXPECT_EQ(count<Invoice>([](const Invoice& i) { return i.backcharges > Money(); }), 1);
    for (const auto state :
        {BackchargeState::claimed, BackchargeState::accepted, BackchargeState::refused}) {
        EXPECT_EQ(count<Backcharge>([&](const Backcharge& b) { return b.state == state; }), 1)
            << word(state);
    }
    Money retained;
    for (const auto& [id, money] : moneyByHouse(book()))
        retained += money.retained;
    EXPECT_GT(retained, Money()) << "held on the house that is underway";
}

TEST_F(SampleBills, ArePaidInPartLateAndOver) {
    const auto bills = allBills(book());
    const auto parts = allAllocations(book());
    const auto payments = allPayments(book());
    std::map<Id<Invoice>, int> paidBy;
    int late = 0;
    for (const Allocation& part : parts) {
        ++paidBy[part.invoice];
        const Invoice& invoice = *book().jobs.of<Invoice>().find(part.invoice);
        late += book().jobs.of<Payment>().find(part.payment)->date > invoice.due ? 1 : 0;
    }
    EXPECT_GT(late, 2);
    EXPECT_TRUE(std::ranges::any_of(paidBy, [](const auto& entry) { return entry.second > 1; }));
    Money over;
    for (const Payment& payment : payments)
        over += unallocated(payment, parts);
    EXPECT_EQ(over, Money::dollars(125));
    const AgingLine owed = agingTotal(aging(bills, payments, parts, endOfYear, AgeFrom::dueDate));
    EXPECT_GT(owed.buckets.front(), Money());
    EXPECT_GT(owed.buckets.back(), Money()) << "over 90 days";
    EXPECT_EQ(owed.credit, Money::dollars(125));
    EXPECT_FALSE(lateBills(bills, parts, endOfYear).empty());
}

TEST_F(SampleBills, APaidHouseOwesNothing) {
    const auto money = moneyByHouse(book());
    int paid = 0;
    for (const auto& [id, house] : book().jobs.of<House>()) {
        if (house.stage != HouseStage::paid)
            continue;
        ++paid;
        EXPECT_EQ(money.at(id).owed, Money()) << house.name;
        EXPECT_EQ(money.at(id).retained, Money()) << house.name;
        EXPECT_EQ(money.at(id).work, money.at(id).value) << house.name;
    }
    EXPECT_GT(paid, 4);
    EXPECT_GT(count<House>([](const House& h) { return h.stage == HouseStage::finished; }), 0)
        << "and some have still to be paid";
}

TEST_F(SampleBills, WaiversGoWithPaymentsAndSomeAreStillDue) {
    std::set<Id<Payment>> withWaiver;
    int open = 0;
    for (const auto& [id, reminder] : book().jobs.of<Reminder>()) {
        if (reminder.payment)
            withWaiver.insert(reminder.payment);
        open += reminder.done.ok() ? 0 : 1;
    }
    EXPECT_GT(withWaiver.size(), 5U);
    EXPECT_GE(open, 2);
    EXPECT_LT(open, 8) << "old waivers have gone out";
}

TEST_F(SampleBills, LeaveWorkToBillOnAHouseUnderway) {
    Money toBill;
    for (const auto& [id, money] : moneyByHouse(book())) {
        EXPECT_GE(money.unbilled(), Money());
        toBill += isFinished(*book().house(id)) ? Money() : money.unbilled();
    }
    EXPECT_GT(toBill, Money());
}

TEST_F(SampleBills, ComeWithDatesAheadAndOneClash) {
    EXPECT_EQ(
        count<HouseDate>([](const HouseDate& d) { return d.kind == HouseDateKind::punch; }), 2);
    EXPECT_GT(count<HouseDate>([](const HouseDate& d) { return d.from > endOfYear; }), 3);
    EXPECT_EQ(clashes(book()).size(), 1U);
}

TEST_F(SampleBills, AreSoundAndPrinted) {
    const BatchRun checked = runBatch({"check", path("shop")});
    EXPECT_EQ(checked.status, 0) << checked.out << checked.err;
    for (const Invoice& invoice : invoices()) {
        const BatchRun paper = runBatch({"print", "invoice", path("shop"), "--number",
            std::to_string(invoice.number), "--text"});
        EXPECT_EQ(paper.status, 0) << paper.err;
        EXPECT_FALSE(paper.out.empty());
    }
}

TEST_F(SampleBills, AreTheSameFromTheSameSeed) {
    const OpenedBook again = make(path("again"), "14");
    EXPECT_EQ(again.book().jobs.of<Invoice>(), book().jobs.of<Invoice>());
    EXPECT_EQ(again.book().jobs.of<Payment>(), book().jobs.of<Payment>());
    EXPECT_EQ(again.book().jobs.of<Extra>(), book().jobs.of<Extra>());
}

TEST_F(SampleBills, AddUpForAShortYearAndALongOne) {
    for (const char* houses : {"1", "3", "31"}) {
        const OpenedBook other = make(path(houses), houses);
        for (const auto& [id, house] : other.book().jobs.of<House>()) {
            const auto billing = billingOf(other.book(), id);
            ASSERT_TRUE(billing.ok()) << houses << ", " << house.name;
            const HouseAccount account = houseAccount(billing->schedule, billing->bills);
            EXPECT_EQ(account.billed + account.retained + account.unbilled, account.value())
                << houses << ", " << house.name;
        }
    }
}

TEST(SampleDiary, LivesByDayAndInTheOrderWritten) {
    SampleDiary diary;
    std::string lived;
    const auto note = [&](char what) {
        return [&lived, what](Date) -> Result<void> {
            lived += what;
            return {};
        };
    };
    diary.on(addDays(endOfYear, 2), note('d'));
    diary.on(endOfYear, note('a'));
    diary.on(endOfYear, note('b'));
    diary.on(addDays(endOfYear, -1), [&](Date day) -> Result<void> {
        lived += '-';
        diary.on(addDays(day, 2), note('c'));
        return {};
    });
    ASSERT_TRUE(diary.liveUntil(addDays(endOfYear, 1)).ok());
    EXPECT_EQ(lived, "-abc") << "what lies beyond is not lived";
    diary.on(endOfYear, [](Date) -> Result<void> { return badInput("No."); });
    EXPECT_EQ(diary.liveUntil(addDays(endOfYear, 9)).error().sentence, "No.");
    EXPECT_EQ(lived, "-abc") << "nothing after a failure";
}

TEST(SampleHouseDays, AreSharesOfItsTime) {
    SampleHouse house;
    house.first = endOfYear;
    house.last = addDays(endOfYear, 20);
    EXPECT_EQ(house.dayAt(0), endOfYear);
    EXPECT_EQ(house.dayAt(50), addDays(endOfYear, 10));
    EXPECT_EQ(house.dayAt(100), house.last);
}

} // namespace
} // namespace miterbook
