// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/hours_checks.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

WorkDone said(std::int64_t basisPoints, PieceOfWork work = PieceOfWork::stairs) {
    return {Id<WorkDone>(1), Id<House>(2), work, Percent::basisPoints(basisPoints)};
}

} // namespace

TEST(WorkDoneCheck, TakesEveryShareUpToAll) {
    for (const std::int64_t share : {0, 1, 1250, 9999, 10'000})
        EXPECT_TRUE(checkWorkDone(said(share)).ok()) << share;
}

TEST(WorkDoneCheck, RefusesLessThanNothingAndMoreThanAll) {
    EXPECT_EQ(checkWorkDone(said(10'050)).error().sentence,
        "Stairs can be from 0 to 100 % done, not 100.5 %.");
    EXPECT_FALSE(checkWorkDone(said(-1)).ok());
}

TEST(WorkDoneCheck, LeavesExtrasToTheirBills) {
    EXPECT_EQ(checkWorkDone(said(5000, PieceOfWork::extras)).error().sentence,
        "Each extra is done or not; say so where it is billed.");
}
