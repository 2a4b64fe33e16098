// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(PaymentRequest, IsTheArithmeticOfTheForm) {
    // [pub] the rules of block 14 of USACE ENG Form 93; [calc] 25,000 to date, 15,000 before at
    // 10 % (B 1,500, C 13,500): E 10,000, F 1,000, L 9,000, retained 2,500, paid 22,500.
    PaymentRequest request;
    request.earned = Money::dollars(25'000);
    request.previousRetained = Money::dollars(1'500);
    request.previousPayments = Money::dollars(13'500);
    request.retained = Money::dollars(1'000);
    EXPECT_EQ(request.previousEarnings(), Money::dollars(15'000));
    EXPECT_EQ(request.earnedNow(), Money::dollars(10'000));
    EXPECT_EQ(request.due(), Money::dollars(9'000));
    EXPECT_EQ(request.totalRetained(), Money::dollars(2'500));
    EXPECT_EQ(request.totalPaid(), Money::dollars(22'500));
}

TEST(PaymentRequest, TakesDeductionsAndGivesThemBack) {
    PaymentRequest request;
    request.earned = Money::dollars(1000);
    request.previousDeductions = Money::dollars(50);
    request.previousRetained = Money::dollars(80);
    request.previousPayments = Money::dollars(670);
    request.retained = Money::dollars(20);
    request.deductions = Money::dollars(30);
    request.retainedRefunded = Money::dollars(100);
    request.deductionsRefunded = Money::dollars(50);
    EXPECT_EQ(request.earnedNow(), Money::dollars(200)); // [calc]
    EXPECT_EQ(request.due(), Money::dollars(300));
    EXPECT_EQ(request.totalRetained(), Money());
    EXPECT_EQ(request.totalDeductions(), Money::dollars(30));
    EXPECT_EQ(
        request.totalPaid() + request.totalDeductions() + request.totalRetained(), request.earned);
}

TEST(PaymentRequest, OfADrawAsksWhatTheDrawAsks) {
    Billing billing = tenThousand();
    issue(billing, makeDraw(billing, {day(1), {toDate(PieceOfWork::doors, 50)}, {}, {}}));
    const Backcharge scratched{Id<Backcharge>(1), lot7, day(2), "scratched floor",
        Money::dollars(75), BackchargeState::accepted};
    const auto draw = makeDraw(billing,
        {day(9), {toDate(PieceOfWork::doors, 100), toDate(PieceOfWork::base, 20)}, {scratched},
            {}});
    ASSERT_TRUE(draw);
    const PaymentRequest request = paymentRequest(billing.bills, *draw);
    EXPECT_EQ(request.earned, Money::dollars(4500));
    EXPECT_EQ(request.previousEarnings(), Money::dollars(2000));
    EXPECT_EQ(request.due(), draw->total());
    EXPECT_EQ(request.due(), Money::dollars(2500 - 250 - 75));
    EXPECT_EQ(request.totalRetained(), Money::dollars(450));
}
