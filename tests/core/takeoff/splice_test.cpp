// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/splice.h"

#include "trim_kit.h"

#include <numeric>
#include <random>

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;

/// The lengths alone.
std::vector<Length> lengths(const SplicedRun& run) {
    std::vector<Length> all;
    for (const RunPart& part : run.parts)
        all.push_back(part.length);
    return all;
}

TEST(SpliceRun, LeavesWhatFitsInOnePiece) {
    EXPECT_THAT(spliceRun(ft(16), ft(16), in(1), 0).parts, ElementsAre(RunPart{ft(16), false}));
    EXPECT_EQ(spliceRun(ft(16), ft(16), in(1), 0).splices, 0);
}

TEST(SpliceRun, IsNeverSplicedWhereNoStickIsKnown) {
    EXPECT_THAT(lengths(spliceRun(ft(50), {}, in(1), 0)), ElementsAre(ft(50)));
}

TEST(SpliceRun, TakesOneSplicePerExtraStick) {
    const SplicedRun run = spliceRun(ft(40), ft(16), in(1), 0);
    EXPECT_THAT(run.parts,
        ElementsAre(RunPart{ft(16), false}, RunPart{ft(16), true}, RunPart{ft(8) + in(2), true}));
    EXPECT_EQ(run.splices, 2);
}

TEST(SpliceRun, NeedsAnotherStickWhereTheScarfsDoNotFit) {
    // Two 16 ft sticks less an inch of scarf do not reach 32 ft.
    const SplicedRun run = spliceRun(ft(32), ft(16), in(1), 0);
    EXPECT_EQ(run.parts.size(), 3U);
    EXPECT_EQ(run.splices, 2);
}

TEST(SpliceRun, EvensOutAStub) {
    EXPECT_THAT(lengths(spliceRun(ft(16, 2), ft(16), in(1), 0)), ElementsAre(in(97, 8), in(97, 8)));
}

TEST(SpliceRun, EndsAtEachOpening) {
    const SplicedRun run = spliceRun(ft(20), ft(16), in(1), 1);
    EXPECT_THAT(run.parts, ElementsAre(RunPart{ft(10), false}, RunPart{ft(10), false}));
    EXPECT_EQ(run.splices, 0);
    EXPECT_EQ(run.longest, ft(10));
    EXPECT_THAT(lengths(spliceRun(ft(9), ft(16), in(1), 2)), ElementsAre(ft(3), ft(3), ft(3)));
}

TEST(SpliceRun, SplicesTheStretchesBetweenOpenings) {
    const SplicedRun run = spliceRun(ft(40), ft(16), in(1), 1);
    EXPECT_EQ(run.splices, 2);
    EXPECT_THAT(run.parts,
        ElementsAre(RunPart{ft(16), false}, RunPart{ft(4) + in(1), true}, RunPart{ft(16), false},
            RunPart{ft(4) + in(1), true}));
}

TEST(SpliceRun, PiecesAddUpAndFitTheirSticks) {
    std::mt19937 random(7);
    std::uniform_int_distribution<int> sixteenths(16, 16 * 12 * 120);
    std::uniform_int_distribution<int> openings(0, 3);
    for (int i = 0; i < 2000; ++i) {
        const Length run = Length::sixteenths(sixteenths(random));
        const int parted = openings(random);
        const SplicedRun spliced = spliceRun(run, ft(16), in(1), parted);
        const std::vector<Length> all = lengths(spliced);
        const Length sum = std::accumulate(all.begin(), all.end(), Length());
        EXPECT_EQ(sum, run + in(1) * spliced.splices);
        EXPECT_LE(std::ranges::max(all), ft(16));
        EXPECT_GT(std::ranges::min(all), Length());
        EXPECT_EQ(std::ssize(all), spliced.splices + 1 + parted);
    }
}

} // namespace
} // namespace miterbook
