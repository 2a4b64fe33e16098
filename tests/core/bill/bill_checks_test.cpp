// SPDX-License-Identifier: GPL-3.0-or-later
// What is refused of bills while it is typed, each with the sentence that the user reads.
#include "core/bill/bill_kit.h"

#include "bill/bill_checks.h"

#include <gtest/gtest.h>

#include <functional>

using namespace miterbook;

namespace {

std::string said(const Result<void>& result) {
    return result ? std::string() : result.error().sentence;
}

/// What is said of a sound row after something in it was changed.
template <class Row>
std::string after(
    Row row, Result<void> (*check)(const Row&), const std::function<void(Row&)>& change) {
    EXPECT_EQ(said(check(row)), "") << "it is sound before";
    change(row);
    return said(check(row));
}

Contract contract() {
    Contract row;
    row.values = {{PieceOfWork::doors, Money::dollars(4000), Percent::whole(50)},
        {PieceOfWork::base, Money::dollars(2500), {}}};
    row.retainage = Percent::whole(10);
    row.tax = Percent::basisPoints(825);
    row.dueDays = 30;
    row.stages = {{"Doors hung", Percent::whole(60), {}}, {"Complete", Percent::whole(40), {}}};
    return row;
}

Payment payment() {
    Payment row;
    row.builder = oakRidge;
    row.date = day(12);
    row.amount = Money::dollars(500);
    return row;
}

TEST(BillChecks, AContractIsOfSharesAndPricesThatCanBe) {
    const auto refused = [](const std::function<void(Contract&)>& change) {
        return after<Contract>(contract(), checkContract, change);
    };
    EXPECT_EQ(refused([](Contract& row) { row.values[1].work = PieceOfWork::doors; }),
        "Doors stands twice in the contract.");
    EXPECT_EQ(refused([](Contract& row) { row.values[0].price = Money::cents(-1); }),
        "The price of Doors is from nothing to 100 million.");
    EXPECT_EQ(refused([](Contract& row) { row.values[0].done = Percent::whole(101); }),
        "Doors cannot be 101 % done.");
    EXPECT_EQ(refused([](Contract& row) { row.retainage = Percent::whole(-1); }),
        "Retainage is from 0 to 100 %.");
    EXPECT_EQ(refused([](Contract& row) { row.tax = Percent::whole(101); }),
        "Sales tax is from 0 to 100 %.");
    EXPECT_EQ(refused([](Contract& row) { row.dueDays = 3661; }),
        "An invoice falls due from 0 to 3,660 days after its date.");
}

TEST(BillChecks, StagesBringNoMoreThanAll) {
    const auto refused = [](const std::function<void(Contract&)>& change) {
        return after<Contract>(contract(), checkContract, change);
    };
    EXPECT_EQ(refused([](Contract& row) { row.stages[0].name = "  "; }),
        "A stage at which a house is billed needs a name.");
    EXPECT_EQ(refused([](Contract& row) { row.stages[0].share = Percent::whole(-5); }),
        "The stage \"Doors hung\" brings -5 %; a share is from 0 to 100 %.");
    EXPECT_EQ(refused([](Contract& row) { row.stages[1].share = Percent::basisPoints(4001); }),
        "The stages add up to 100.01 %; together they bring no more than 100 %.");
    BillingTerms terms;
    EXPECT_EQ(said(checkBillingTerms(terms)), "");
    terms.stages = contract().stages;
    terms.stages[0].share = Percent::whole(61);
    EXPECT_EQ(said(checkBillingTerms(terms)),
        "The stages add up to 101 %; together they bring no more than 100 %.");
    terms.tax = Percent::whole(-1);
    EXPECT_EQ(said(checkBillingTerms(terms)), "Sales tax is from 0 to 100 %.");
}

TEST(BillChecks, NumbersAndDaysAreWithinReason) {
    const auto refused = [](const std::function<void(BillingSetup&)>& change) {
        return after<BillingSetup>({}, checkBillingSetup, change);
    };
    EXPECT_EQ(refused([](BillingSetup& row) { row.prefix = std::string(21, 'A'); }),
        "What stands before an invoice's number is at most 20 letters.");
    EXPECT_EQ(refused([](BillingSetup& row) { row.firstNumber = 0; }),
        "The first invoice is number 1 or above.");
    EXPECT_EQ(refused([](BillingSetup& row) { row.lateDays = -1; }),
        "An invoice is late from 0 to 3,660 days after it fell due.");
    EXPECT_EQ(refused([](BillingSetup& row) { row.remindDays = 3661; }),
        "Reminders are shown from 0 to 3,660 days ahead.");
}

TEST(BillChecks, AnExtraIsAgreedByName) {
    Extra sound;
    sound.title = "Window seat";
    sound.price = Money::dollars(480);
    const auto refused = [&](const std::function<void(Extra&)>& change) {
        return after<Extra>(sound, checkExtra, change);
    };
    EXPECT_EQ(
        refused([](Extra& row) { row.title = " \t"; }), "Say in a few words what the extra is.");
    EXPECT_EQ(refused([](Extra& row) { row.price = Money::dollars(100'000'001); }),
        "The price of an extra is up to 100 million.");
    EXPECT_EQ(refused([](Extra& row) { row.material = Money::dollars(-100'000'001); }),
        "The material of an extra is up to 100 million.");
    const std::string whoAndWhen = "Say who approved the extra \"Window seat\", and when.";
    EXPECT_EQ(refused([](Extra& row) { row.state = ExtraState::approved; }), whoAndWhen);
    EXPECT_EQ(refused([](Extra& row) {
        row.state = ExtraState::approved;
        row.approvedBy = "Ms. Okafor";
    }),
        whoAndWhen);
    sound.state = ExtraState::approved;
    sound.approvedBy = "Ms. Okafor";
    sound.approved = day(3);
    EXPECT_EQ(said(checkExtra(sound)), "");
}

TEST(BillChecks, LinesOfExtrasCountNothingBelowZero) {
    const auto refused = [](const std::function<void(ExtraLine&)>& change) {
        return after<ExtraLine>({}, checkExtraLine, change);
    };
    EXPECT_EQ(refused([](ExtraLine& row) { row.quantity = Quantity::count(-1); }),
        "A quantity of an extra is from nothing to a million.");
    EXPECT_EQ(refused([](ExtraLine& row) { row.material = Money::dollars(100'000'001); }),
        "The material of an extra is up to 100 million.");
}

TEST(BillChecks, ABackchargeIsAcceptedWithReasonAndAmount) {
    Backcharge row;
    EXPECT_EQ(said(checkBackcharge(row)), "") << "still being typed";
    row.amount = Money::cents(-1);
    EXPECT_EQ(said(checkBackcharge(row)), "A backcharge is from nothing to 100 million.");
    row.amount = Money();
    row.state = BackchargeState::accepted;
    EXPECT_EQ(said(checkBackcharge(row)), "Say what the backcharge is for before it is accepted.");
    row.reason = "Scratched door";
    EXPECT_EQ(said(checkBackcharge(row)), "Say how much the backcharge is before it is accepted.");
    row.amount = Money::dollars(85);
    EXPECT_EQ(said(checkBackcharge(row)), "");
}

TEST(BillChecks, PaymentsAndRemindersSayWhoAndWhen) {
    const auto refused = [](const std::function<void(Payment&)>& change) {
        return after<Payment>(payment(), checkPayment, change);
    };
    EXPECT_EQ(refused([](Payment& row) { row.amount = Money(); }),
        "A payment is more than nothing and up to 100 million.");
    EXPECT_EQ(
        refused([](Payment& row) { row.date = noDate; }), "Say on which day the payment came in.");
    EXPECT_EQ(refused([](Payment& row) { row.builder = {}; }), "Say which builder paid.");
    Reminder reminder;
    reminder.title = "Waiver";
    EXPECT_EQ(said(checkReminder(reminder)), "Say for which day \"Waiver\" is.");
    reminder.due = day(9);
    EXPECT_EQ(said(checkReminder(reminder)), "");
    reminder.title.clear();
    EXPECT_EQ(said(checkReminder(reminder)), "Say what to be reminded of.");
}

} // namespace
