// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

std::string refusal(const Result<Bill>& bill) {
    return bill ? std::string() : bill.error().sentence;
}

} // namespace

TEST(Draw, BillsWhatIsNew) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 25)}, {}, {}}));
    const auto draw = makeDraw(billing,
        {day(8), {toDate(PieceOfWork::doors, 75), toDate(PieceOfWork::windows, 10)}, {}, {}});
    ASSERT_TRUE(draw);
    ASSERT_EQ(draw->lines.size(), 2U);
    EXPECT_EQ(draw->lines[0].amount, Money::dollars(2000));
    EXPECT_EQ(draw->lines[0].toDate, Percent::whole(75));
    EXPECT_EQ(draw->lines[1].amount, Money::dollars(350));
    EXPECT_EQ(draw->invoice.retained, Money::dollars(235));
    EXPECT_EQ(draw->total(), Money::dollars(2115));
    EXPECT_EQ(draw->invoice.due, day(38));
    EXPECT_EQ(draw->invoice.lot, "7");
    EXPECT_EQ(draw->invoice.purchaseOrder, "PO 881");
}

TEST(Draw, TaxesTheWorkOnce) {
    Billing billing = tenThousand();
    billing.contract.tax = Percent::basisPoints(825);
    const auto draw = makeDraw(billing, {day(1), {toDate(PieceOfWork::windows, 33)}, {}, {}});
    EXPECT_EQ(draw->invoice.tax, Money::cents(9529)); // 1,155.00 x 8.25 % = 95.2875 [calc]
    EXPECT_EQ(draw->total(), Money::cents(115500 - 11550 + 9529));
    issue(billing, draw);
    EXPECT_EQ(makeRelease(billing, day(60), Money::cents(11550))->total(), Money::cents(11550));
}

TEST(Draw, RefusesWhatCannotBeBilled) {
    Billing billing = tenThousand();
    EXPECT_EQ(refusal(makeDraw(billing, {day(1), {}, {}, {}})),
        "There is nothing to bill: nothing more has been done since the last draw.");
    EXPECT_EQ(refusal(makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 101)}, {}, {}})),
        "doors cannot be 101 % done; a share is from 0 to 100 %.");
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 50)}, {}, {}}));
    EXPECT_EQ(refusal(makeDraw(billing, {day(2), {toDate(PieceOfWork::doors, 40)}, {}, {}})),
        "doors has been billed up to 2,000.00 already, which is more than 40 % of it; a credit "
        "note takes back.");
    EXPECT_FALSE(makeDraw(billing, {day(2), {toDate(PieceOfWork::doors, 50)}, {}, {}}));
}

TEST(Draw, UsesUpDeposits) {
    Billing billing = tenThousand();
    EXPECT_FALSE(makeDeposit(billing, day(1), Money()));
    EXPECT_FALSE(makeDeposit(billing, day(1), Money::dollars(10'001)));
    EXPECT_EQ(issue(billing, makeDeposit(billing, day(1), Money::dollars(1000))).total(),
        Money::dollars(1000));
    const DrawAsk ask{day(9), {toDate(PieceOfWork::doors, 50)}, {}, Money::dollars(600)};
    EXPECT_EQ(issue(billing, makeDraw(billing, ask)).total(), Money::dollars(2000 - 200 - 600));
    EXPECT_EQ(depositOf(billing.bills), Money::dollars(400));
    EXPECT_EQ(refusal(makeDraw(
                  billing, {day(10), {toDate(PieceOfWork::doors, 100)}, {}, Money::dollars(401)})),
        "Only 400.00 of deposits is left to be used up.");
}

TEST(Draw, AsksForNoDepositOnWhatIsBilledAlready) {
    Billing billing = tenThousand();
    issue(billing, makeDeposit(billing, day(1), Money::dollars(1000)));
    issue(billing, makeDraw(billing, {day(9), {toDate(PieceOfWork::doors, 50)}, {}, {}}));
    EXPECT_EQ(refusal(makeDeposit(billing, day(10), Money::dollars(7001))),
        "A deposit of 7,001.00 is more than the house still brings.");
    EXPECT_TRUE(makeDeposit(billing, day(10), Money::dollars(7000)));
}

TEST(Draw, TakesAcceptedBackchargesOffOnce) {
    Billing billing = tenThousand();
    Backcharge tile{Id<Backcharge>(1), lot7, day(1), "cracked tile", Money::dollars(120),
        BackchargeState::claimed};
    const auto ask = [&](int percent) {
        return DrawAsk{day(2), {toDate(PieceOfWork::doors, percent)}, {tile}, {}};
    };
    EXPECT_EQ(refusal(makeDraw(billing, ask(50))),
        "The backcharge \"cracked tile\" has not been accepted and cannot come off a bill.");
    tile.state = BackchargeState::accepted;
    EXPECT_EQ(refusal(makeDraw(billing, ask(1))),
        "What comes off is 84.00 more than the draw brings; leave some of it for the next one.");
    EXPECT_EQ(issue(billing, makeDraw(billing, ask(50))).backcharges(), Money::dollars(120));
    EXPECT_EQ(billing.bills.back().total(), Money::dollars(2000 - 200 - 120));
    EXPECT_EQ(refusal(makeDraw(billing, ask(60))),
        "The backcharge \"cracked tile\" has come off a bill already.");
}

TEST(Release, GivesNoMoreThanIsHeld) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 100)}, {}, {}}));
    EXPECT_EQ(refusal(makeRelease(billing, day(40), Money::dollars(401))),
        "There is 400.00 of retainage held; more than nothing and no more than that can be "
        "released.");
    EXPECT_EQ(issue(billing, makeRelease(billing, day(40), Money::dollars(400))).total(),
        Money::dollars(400));
    EXPECT_EQ(retainedOf(billing.bills), Money());
    EXPECT_FALSE(makeRelease(billing, day(40), Money::cents(1)));
}

TEST(UnbilledWork, IsWhatCouldBeBilledToday) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 50)}, {}, {}}));
    const auto works = unbilledWork(billing.schedule, billing.bills,
        {toDate(PieceOfWork::base, 10), toDate(PieceOfWork::doors, 80),
            toDate(PieceOfWork::windows, 0), toDate(PieceOfWork::crown, 50)});
    ASSERT_EQ(works.size(), 2U);
    EXPECT_EQ(works[0].label, "doors");
    EXPECT_EQ(works[0].amount(), Money::dollars(1200));
    EXPECT_EQ(works[1].amount(), Money::dollars(250));
}
