// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/geometry.h"

#include "takeoff/takeoff.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace miterbook {
namespace {

constexpr Length in(std::int64_t whole, int sixteenths = 0) {
    return Length::inches(whole) + Length::sixteenths(sixteenths);
}

TEST(SawAngle, IsNinetyLessHalfTheCorner) {
    EXPECT_DOUBLE_EQ(sawAngleAt(90), 45);
    EXPECT_DOUBLE_EQ(sawAngleAt(135), 22.5);
    EXPECT_DOUBLE_EQ(sawAngleAt(60), 60); // trade.md section 1: a 60 degree peak needs 60 [calc]
}

TEST(LongMinusShort, IsTheFaceWidthAtASquareCorner) {
    EXPECT_EQ(longMinusShort(in(3, 4), 90), in(3, 4));
    EXPECT_EQ(longMinusShort(Length::millimetres(83), 90), Length::millimetres(83));
}

TEST(LongMinusShort, FollowsTheCotangent) {
    // 3 1/4 x cot(67.5) = 1.34619 [calc, by hand]
    EXPECT_NEAR(longMinusShort(in(3, 4), 135).toInches(), 1.34619, 5e-6);
    // 3 1/4 x cot(30) = 3 1/4 x sqrt 3 = 5.62917 [calc]
    EXPECT_NEAR(longMinusShort(in(3, 4), 60).toInches(), 3.25 * std::numbers::sqrt3, 5e-7);
}

// trade.md section 1, picture frame 36 x 60, reveal 3/16, casing 3 1/4 [calc].
TEST(SidePoints, OfTheThirtySixBySixtyFrame) {
    const SidePoints head = sidePoints(in(36), 90, 90, in(0, 3), in(3, 4));
    EXPECT_EQ(head.shortPoint, in(36, 6));
    EXPECT_EQ(head.longPoint, in(42, 14));
    const SidePoints leg = sidePoints(in(60), 90, 90, in(0, 3), in(3, 4));
    EXPECT_EQ(leg.shortPoint, in(60, 6));
    EXPECT_EQ(leg.longPoint, in(66, 14));
    const Length total = 2 * (head.longPoint + leg.longPoint);
    EXPECT_EQ(total, in(219, 8));
    EXPECT_NEAR(total.toFeet(), 18.29, 0.005);
}

TEST(SidePoints, OfARegularOctagon) {
    // Side 24: k = 2 cot 67.5 = 0.828427; SP = 24 + 0.1875 k, LP = SP + 3.25 k [calc]
    const SidePoints side = sidePoints(in(24), 135, 135, in(0, 3), in(3, 4));
    EXPECT_NEAR(side.shortPoint.toInches(), 24.155330, 1e-6);
    EXPECT_NEAR(side.longPoint.toInches(), 26.847718, 1e-6);
}

TEST(SideBetween, RestsSquareOnASquareCorner) {
    const SidePoints leg = sideBetween(in(80), restRun(90), miterRun(90), in(0, 3), in(3, 4));
    EXPECT_EQ(leg.shortPoint, in(80, 3));
    EXPECT_EQ(leg.longPoint, in(83, 7));
}

TEST(SideBetween, LeaningLegIsLongerInsideThanOutsideAtItsFoot) {
    // At a 120 degree sill corner cot(120) = -0.57735: the foot slants inward.
    const double run = restRun(120);
    EXPECT_NEAR(run, -1 / std::numbers::sqrt3, 1e-12);
    const SidePoints leg = sideBetween(in(40), run, miterRun(90), in(0, 4), in(3));
    // Foot: inner -0.1443, outer -1.8764; head: inner 0.25, outer 3.25.
    EXPECT_NEAR(leg.longPoint.toInches(), 40 - 0.144338 + 3.25, 1e-5);
    EXPECT_NEAR(leg.shortPoint.toInches(), 40 - 1.876388 + 0.25, 1e-5);
}

TEST(SegmentalArch, OfKnownTriangles) {
    // Chord 48, rise 8: R = (576 + 64) / 16 = 40; arc = 80 asin(0.6) = 51.48009 [calc]
    const Arch arch = segmentalArch(in(48), in(8));
    EXPECT_EQ(arch.radius, in(40));
    EXPECT_NEAR(arch.arc.toInches(), 80 * std::asin(0.6), 1e-6);
    EXPECT_NEAR(arch.arc.toInches(), 51.48009, 1e-5);
}

TEST(SegmentalArch, HalfCircleIsPiTimesRadius) {
    const Arch arch = segmentalArch(in(36), in(18));
    EXPECT_EQ(arch.radius, in(18));
    EXPECT_NEAR(arch.arc.toInches(), 18 * std::numbers::pi, 1e-6);
}

TEST(SegmentalArch, PastAHalfCircleGoesTheLongWay) {
    // Chord 48, rise 72: R = (576 + 5184) / 144 = 40; arc = 2 pi 40 - 51.48009 [calc]
    const Arch arch = segmentalArch(in(48), in(72));
    EXPECT_NEAR(arch.arc.toInches(), 80 * std::numbers::pi - 51.48009, 1e-5);
}

TEST(ArchLeg, UnderAHalfCircleEndsSquareAtTheSpringLine) {
    const ArchLeg leg = archLeg(in(60), in(36), in(18), in(0, 3), in(3, 4));
    EXPECT_EQ(leg.points.shortPoint, in(60));
    EXPECT_EQ(leg.points.longPoint, in(60));
    EXPECT_NEAR(leg.sawAngle, 0, 1e-6);
}

TEST(ArchLeg, PointsLieOnBothEdgesOfTheArch) {
    // Chord 48, rise 8, R 40, centre 32 below the spring line [calc].
    const ArchLeg leg = archLeg(in(60), in(48), in(8), in(0, 4), in(3));
    const double inner = leg.points.shortPoint.toInches() - 60 + 32;
    EXPECT_NEAR(std::hypot(24.25, inner), 40.25, 1e-6);
    const double outer = leg.points.longPoint.toInches() - 60 + 32;
    EXPECT_NEAR(std::hypot(27.25, outer), 43.25, 1e-6);
    EXPECT_NEAR(std::tan(leg.sawAngle * std::numbers::pi / 180), (outer - inner) / 3, 1e-6);
}

struct CrownCase {
    double spring, corner, miter, bevel, within;
    const char* source;
};

class CrownCut : public testing::TestWithParam<CrownCase> {};

TEST_P(CrownCut, AgreesWithTheTable) {
    const CrownCase& c = GetParam();
    const CompoundCut cut = crownCut(c.spring, c.corner);
    EXPECT_NEAR(cut.miter, c.miter, c.within) << c.source;
    EXPECT_NEAR(cut.bevel, c.bevel, c.within) << c.source;
}

// trade.md section 4.
INSTANTIATE_TEST_SUITE_P(Tables, CrownCut,
    testing::Values(
        CrownCase{38, 90, 31.6, 33.9, 0.05, "[pub] a miter saw's instruction manual, table A"},
        CrownCase{45, 90, 35.3, 30.0, 0.05, "[pub] a miter saw's instruction manual, table A"},
        CrownCase{38, 90, 31.6190, 33.8629, 5e-5, "[pub] corwinwmc.com crown table"},
        CrownCase{38, 135, 14.3064, 17.5512, 5e-5, "[pub] corwinwmc.com crown table"},
        CrownCase{38, 45, 56.0670, 46.7210, 1e-3, "[pub] the same; it breaks off at three places"},
        CrownCase{38, 85, 33.90, 35.52, 0.005, "[calc]"},
        CrownCase{45, 135, 16.32, 15.70, 0.005, "[calc]"}));

TEST(CrownCuts, TightenAsTheCornerDoes) {
    for (int corner = 60; corner < 179; ++corner) {
        EXPECT_GT(crownCut(38, corner).miter, crownCut(38, corner + 1).miter) << corner;
        EXPECT_GT(crownCut(38, corner).bevel, crownCut(38, corner + 1).bevel) << corner;
    }
}

// trade.md section 6: L 72, b 1 1/4, G 4 -> 13, gap 3.982 [calc].
TEST(Balusters, OfASixFootRun) {
    const BalusterSpacing spacing = balusters(in(72), in(1, 4), in(4));
    EXPECT_EQ(spacing.count, 13);
    EXPECT_NEAR(spacing.gap.toInches(), 3.982, 0.0005);
}

TEST(Balusters, GapStaysBelowTheLargestAndOneFewerWouldNotDo) {
    for (int sixteenths = 16; sixteenths < 16 * 200; sixteenths += 7) {
        const Length run = Length::sixteenths(sixteenths);
        const BalusterSpacing spacing = balusters(run, in(1, 4), in(4));
        EXPECT_LT(spacing.gap, in(4)) << sixteenths;
        EXPECT_LE(run - spacing.gap * (spacing.count + 1) - in(1, 4) * spacing.count,
            Length::nanometres(spacing.count + 1));
        if (spacing.count > 0) {
            EXPECT_GE(run - in(1, 4) * (spacing.count - 1), in(4) * spacing.count) << sixteenths;
        }
    }
}

TEST(Balusters, RunThatDividesEvenlyGetsOneMore) {
    // 4 + 3 x (1 1/4 + 4) = 19 3/4: three would leave gaps of just 4.
    EXPECT_EQ(balusters(in(19, 12), in(1, 4), in(4)).count, 4);
    EXPECT_EQ(balusters(in(3), in(1, 4), in(4)).count, 0);
}

// trade.md section 1: 2x4 wall with 1/2 in board both sides 4 9/16, 2x6 wall 6 9/16 [cp].
TEST(ExtensionDepth, IsWallLessFrame) {
    EXPECT_EQ(extensionDepth(in(6, 9), in(4, 9)), in(2));
    EXPECT_EQ(extensionDepth(in(4, 9), in(4, 9)), Length());
    EXPECT_EQ(extensionDepth(in(4, 9), in(6, 9)), Length());
}

TEST(ExtensionDepth, IsNoneWhereEitherIsNotSaid) {
    EXPECT_EQ(extensionDepth(in(6, 9), Length()), Length());
    EXPECT_EQ(extensionDepth(Length(), in(4, 9)), Length());
}

} // namespace
} // namespace miterbook
