// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using Lot = StickNeed::Lot;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(StickNeeds, GatherEqualPiecesLongestFirst) {
    Takeoff takeoff = takeOne(window(in(36), in(60)));
    const Takeoff other = takeOne(door(ft(2, 8)));
    takeoff.pieces.insert(takeoff.pieces.end(), other.pieces.begin(), other.pieces.end());
    const std::vector<StickNeed> needs = stickNeeds(takeoff);
    ASSERT_EQ(needs.size(), 1U);
    EXPECT_EQ(needs[0].profile, profiles.casing);
    EXPECT_TRUE(needs[0].mitered);
    EXPECT_THAT(needs[0].lots,
        ElementsAre(Lot{in(83, 7), 4}, Lot{in(66, 14), 2}, Lot{in(42, 14), 2}, Lot{in(38, 14), 2}));
    const Length doors = 4 * in(83, 7) + 2 * in(38, 14);
    EXPECT_THAT(needs[0].byWork,
        ElementsAre(
            std::pair(PieceOfWork::doors, doors), std::pair(PieceOfWork::windows, in(219, 8))));
}

TEST(StickNeeds, ComeInProfileOrderAndKnowSquareStock) {
    Room den = room({ft(12), ft(10), ft(12), ft(10)});
    Opening opening = window(in(36), in(60), TrimStyle::stoolAndApron);
    const std::vector<StickNeed> needs = stickNeeds(takeOne(den, {opening}));
    ASSERT_EQ(needs.size(), 3U);
    EXPECT_EQ(needs[0].profile, profiles.casing);
    EXPECT_EQ(needs[1].profile, profiles.stool);
    EXPECT_EQ(needs[2].profile, profiles.base);
    EXPECT_FALSE(needs[2].mitered); // coped base is cut square
    EXPECT_THAT(needs[2].lots, ElementsAre(Lot{ft(12), 2}, Lot{ft(10), 2}));
}

TEST(StickNeeds, LeaveOutWhatIsNoPiece) {
    Takeoff takeoff;
    Piece none;
    none.profile = profiles.casing;
    none.longPoint = in(10);
    none.count = 0;
    takeoff.pieces.push_back(none);
    none.count = 1;
    none.profile = {};
    takeoff.pieces.push_back(none);
    EXPECT_THAT(stickNeeds(takeoff), IsEmpty());
}

TEST(StickNeeds, HoldAllThatRuns) {
    Opening opening = window(in(36), in(60), TrimStyle::stoolAndApron);
    opening.count = 4;
    const Takeoff takeoff = takeOne(opening);
    for (const StickNeed& need : stickNeeds(takeoff)) {
        Length lots;
        for (const Lot& lot : need.lots)
            lots += lot.length * lot.count;
        Length works;
        for (const auto& [work, length] : need.byWork)
            works += length;
        EXPECT_EQ(lots, runningLength(takeoff, need.profile));
        EXPECT_EQ(works, lots);
    }
}

} // namespace
} // namespace miterbook
