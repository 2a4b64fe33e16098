// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Extra extraOf(int id, ExtraState state, Money price) {
    Extra extra;
    extra.id = Id<Extra>(id);
    extra.house = lot7;
    extra.title = "Extra " + std::to_string(id);
    extra.state = state;
    extra.price = price;
    return extra;
}

} // namespace

TEST(ScheduleOfValues, EarnsLineByLine) {
    // [pub] schedule-of-values line: 12,000 x 18 % + 8,500 x 2 % + 25,000 x 7 % = 4,080.
    const std::vector schedule{valueLine(PieceOfWork::doors, Money::dollars(12'000)),
        valueLine(PieceOfWork::windows, Money::dollars(8'500)),
        valueLine(PieceOfWork::base, Money::dollars(25'000))};
    EXPECT_EQ(earnedToDate(schedule,
                  {toDate(PieceOfWork::doors, 18), toDate(PieceOfWork::windows, 2),
                      toDate(PieceOfWork::base, 7), toDate(PieceOfWork::crown, 100)}),
        Money::dollars(4'080));
    EXPECT_EQ(earnedToDate(schedule, {}), Money());
}

TEST(ScheduleOfValues, HoldsAgreedExtrasOnly) {
    const std::vector<ContractLine> lines{
        {Id<ContractLine>(1), {}, PieceOfWork::base, Money::dollars(900)},
        {Id<ContractLine>(2), {}, PieceOfWork::doors, Money::dollars(2000)},
        {Id<ContractLine>(3), {}, PieceOfWork::base, Money::dollars(100)}};
    const auto schedule = scheduleOfValues(lines,
        {extraOf(1, ExtraState::asked, Money::dollars(10)),
            extraOf(2, ExtraState::approved, Money::dollars(240)),
            extraOf(3, ExtraState::dropped, Money::dollars(10)),
            extraOf(4, ExtraState::done, Money::dollars(-60))});
    ASSERT_EQ(schedule.size(), 4U);
    EXPECT_EQ(schedule[0].label, "Doors");
    EXPECT_EQ(schedule[1], (ValueLine{{PieceOfWork::base, {}}, "Base", Money::dollars(1000)}));
    EXPECT_EQ(schedule[2].key.extra, Id<Extra>(2));
    EXPECT_EQ(valueOf(schedule), Money::dollars(3180));
}

TEST(StageProgress, AddsTheSharesReached) {
    const std::vector extras{extraOf(2, ExtraState::approved, Money::dollars(240)),
        extraOf(4, ExtraState::done, Money::dollars(100))};
    const auto schedule = scheduleOfValues(
        {{Id<ContractLine>(1), {}, PieceOfWork::doors, Money::dollars(1000)}}, extras);
    const std::vector<DrawStage> stages{{Id<DrawStage>(1), {}, 1, "first trip", Percent::whole(60)},
        {Id<DrawStage>(2), {}, 2, "second trip", Percent::whole(30)},
        {Id<DrawStage>(3), {}, 3, "punch", Percent::whole(10)}};
    EXPECT_EQ(earnedToDate(schedule, progressByStage(schedule, stages, 0, {})), Money());
    EXPECT_EQ(earnedToDate(schedule, progressByStage(schedule, stages, 2, extras)),
        Money::dollars(1000)); // 90 % of 1,000 and the extra that is done
    EXPECT_EQ(earnedToDate(schedule, progressByStage(schedule, stages, 3, {})),
        Money::dollars(1000));
    EXPECT_EQ(
        earnedToDate(schedule, progressOnCompletion(schedule, extras)), Money::dollars(1100));
}
