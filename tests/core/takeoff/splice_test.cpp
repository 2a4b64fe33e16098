// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/splice.h"

#include "trim_kit.h"

#include <numeric>
#include <random>

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;

TEST(SpliceRun, LeavesWhatFitsInOnePiece) {
    EXPECT_THAT(spliceRun(ft(16), ft(16), in(1), 0).pieces, ElementsAre(ft(16)));
    EXPECT_EQ(spliceRun(ft(16), ft(16), in(1), 0).splices, 0);
}

TEST(SpliceRun, IsNeverDividedWhereNoStickIsKnown) {
    EXPECT_THAT(spliceRun(ft(50), {}, in(1), 0).pieces, ElementsAre(ft(50)));
}

TEST(SpliceRun, TakesOneSplicePerExtraStick) {
    const SplicedRun run = spliceRun(ft(40), ft(16), in(1), 0);
    EXPECT_THAT(run.pieces, ElementsAre(ft(16), ft(16), ft(8) + in(2)));
    EXPECT_EQ(run.splices, 2);
}

TEST(SpliceRun, NeedsAnotherStickWhereTheScarfsDoNotFit) {
    // Two 16 ft sticks less an inch of scarf do not reach 32 ft.
    const SplicedRun run = spliceRun(ft(32), ft(16), in(1), 0);
    EXPECT_EQ(run.pieces.size(), 3U);
    EXPECT_EQ(run.splices, 2);
}

TEST(SpliceRun, EvensOutAStub) {
    const SplicedRun run = spliceRun(ft(16, 2), ft(16), in(1), 0);
    EXPECT_THAT(run.pieces, ElementsAre(in(97, 8), in(97, 8)));
}

TEST(SpliceRun, EndsFreelyBehindADoor) {
    const SplicedRun run = spliceRun(ft(20), ft(16), in(1), 1);
    EXPECT_THAT(run.pieces, ElementsAre(ft(10), ft(10)));
    EXPECT_EQ(run.splices, 0);
}

TEST(SpliceRun, PiecesAddUpAndFitTheirSticks) {
    std::mt19937 random(7);
    std::uniform_int_distribution<int> sixteenths(1, 16 * 12 * 120);
    std::uniform_int_distribution<int> breaks(0, 3);
    for (int i = 0; i < 2000; ++i) {
        const Length run = Length::sixteenths(sixteenths(random));
        const int free = breaks(random);
        const SplicedRun spliced = spliceRun(run, ft(16), in(1), free);
        const Length sum = std::accumulate(spliced.pieces.begin(), spliced.pieces.end(), Length());
        EXPECT_EQ(sum, run + in(1) * spliced.splices);
        EXPECT_LE(std::ranges::max(spliced.pieces), ft(16));
        EXPECT_GT(std::ranges::min(spliced.pieces), Length());
        EXPECT_GE(std::ssize(spliced.pieces), spliced.splices + 1);
        EXPECT_LE(std::ssize(spliced.pieces), spliced.splices + 1 + free);
    }
}

} // namespace
} // namespace miterbook
