// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/time_kit.h"

#include "hours/approval.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Week crewWeek() {
    return weekGrid({timeAt(0, lena, PieceOfWork::doors, Hours::whole(8)),
                        timeAt(1, omar, PieceOfWork::base, Hours::whole(8))},
        weekday(0));
}

} // namespace

TEST(Approval, IsForEverybodyInTheWeek) {
    IdSource ids;
    const auto made = approveWeek(crewWeek(), {}, weekday(7), "Lena", ids);
    ASSERT_TRUE(made);
    ASSERT_EQ(made->size(), 2U);
    EXPECT_TRUE(isApproved(*made, lena, weekday(0)));
    EXPECT_TRUE(isApproved(*made, omar, weekday(6)));
    EXPECT_FALSE(isApproved(*made, lena, weekday(7)));
    EXPECT_FALSE(isApproved(*made, lena, weekday(-1)));
    EXPECT_EQ(approveWeek(crewWeek(), *made, weekday(7), "Lena", ids).error().sentence,
        "There is nothing left to approve in the week of 2026-03-02.");
}

TEST(Approval, WaitsForTheEndOfTheWeek) {
    IdSource ids;
    EXPECT_EQ(approveWeek(crewWeek(), {}, weekday(6), "Lena", ids).error().sentence,
        "The week of 2026-03-02 is not over yet.");
}

TEST(Approval, KeepsItsEntriesAsTheyAre) {
    IdSource ids;
    const auto made = approveWeek(crewWeek(), {}, weekday(7), "Lena", ids);
    const auto refused = checkNotApproved(
        *made, timeAt(2, lena, PieceOfWork::doors, Hours::whole(1)), "Lena");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().fault, Fault::conflict);
    EXPECT_EQ(refused.error().sentence,
        "The week of Lena with 2026-03-04 has been approved; take "
        "back the approval to change it.");
    EXPECT_TRUE(
        checkNotApproved(*made, timeAt(8, lena, PieceOfWork::doors, Hours::whole(1)), "Lena"));
}
