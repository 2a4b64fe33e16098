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
    const std::vector<ContractValue> values{{PieceOfWork::base, Money::dollars(900), {}},
        {PieceOfWork::doors, Money::dollars(2000), {}},
        {PieceOfWork::base, Money::dollars(100), {}}};
    const auto schedule = scheduleOfValues(values,
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

namespace {

/// 1,000 of doors and 500 of base with three stages; and two extras, one of them done.
struct Agreed {
    Agreed() {
        contract.values = {{PieceOfWork::doors, Money::dollars(1000), Percent::whole(25)},
            {PieceOfWork::base, Money::dollars(500), {}}};
        contract.stages = {{"first trip", Percent::whole(60), noDate},
            {"second trip", Percent::whole(30), noDate}, {"punch", Percent::whole(10), noDate}};
    }
    Money earned() const {
        const auto schedule = scheduleOfValues(contract.values, extras);
        return earnedToDate(schedule, progressOf(contract, schedule, extras));
    }
    Contract contract;
    std::vector<Extra> extras{extraOf(2, ExtraState::approved, Money::dollars(240)),
        extraOf(4, ExtraState::done, Money::dollars(100))};
};

} // namespace

TEST(Progress, ByPieceOfWorkIsWhatIsDoneOfEach) {
    Agreed agreed;
    EXPECT_EQ(agreed.earned(), Money::dollars(350)); // 25 % of doors and the extra that is done
}

TEST(Progress, ByStageAddsTheSharesReached) {
    Agreed agreed;
    agreed.contract.drawBy = DrawBy::stage;
    EXPECT_EQ(agreed.earned(), Money::dollars(100));
    agreed.contract.stages[0].reached = day(3);
    agreed.contract.stages[1].reached = day(9);
    EXPECT_EQ(agreed.earned(), Money::dollars(1450)); // 90 % of 1,500 and the extra
    agreed.contract.stages[2].share = Percent::whole(90);
    agreed.contract.stages[2].reached = day(12);
    EXPECT_EQ(agreed.earned(), Money::dollars(1600)) << "no more than all of it";
}

TEST(Progress, OnCompletionIsAllOrNothing) {
    Agreed agreed;
    agreed.contract.drawBy = DrawBy::completion;
    EXPECT_EQ(agreed.earned(), Money::dollars(100));
    agreed.contract.completed = day(20);
    EXPECT_EQ(agreed.earned(), Money::dollars(1600));
}
