// SPDX-License-Identifier: GPL-3.0-or-later
// Sections are drawings: they fill their rectangle, do not cross themselves and have the areas that
// plane geometry gives.
#include "book/section.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace miterbook {
namespace {

using Outline = std::vector<SectionPoint>;

/// The shoelace formula; over 0 where the outline turns to the left.
double areaOf(const Outline& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const SectionPoint& a = outline[i];
        const SectionPoint& b = outline[(i + 1) % outline.size()];
        twice += a.along * b.out - b.along * a.out;
    }
    return twice / 2;
}

double side(const SectionPoint& a, const SectionPoint& b, const SectionPoint& c) {
    return (b.along - a.along) * (c.out - a.out) - (b.out - a.out) * (c.along - a.along);
}

bool crosses(
    const SectionPoint& a, const SectionPoint& b, const SectionPoint& c, const SectionPoint& d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

bool crossesItself(const Outline& outline) {
    const std::size_t n = outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n; ++j) {
            if (crosses(outline[i], outline[(i + 1) % n], outline[j], outline[(j + 1) % n]))
                return true;
        }
    }
    return false;
}

struct Size {
    double thickness;
    double width;
};

constexpr Size sizes[] = {{0.6875, 2.25}, {0.5625, 5.25}, {0.6875, 0.6875}, {2.375, 2.25}, {4, 1}};

TEST(Section, FillsItsRectangleAndDoesNotCrossItself) {
    for (const auto& [section, name] : Words<Section>::list) {
        for (const Size& size : sizes) {
            const Outline outline = sectionOutline(section, size.thickness, size.width);
            double along[2] = {1e9, -1e9};
            double out[2] = {1e9, -1e9};
            for (const SectionPoint& point : outline) {
                along[0] = std::min(along[0], point.along);
                along[1] = std::max(along[1], point.along);
                out[0] = std::min(out[0], point.out);
                out[1] = std::max(out[1], point.out);
            }
            EXPECT_NEAR(along[0], 0, 1e-9) << name;
            EXPECT_NEAR(along[1], size.width, 1e-9) << name;
            EXPECT_NEAR(out[0], 0, 1e-9) << name;
            EXPECT_NEAR(out[1], size.thickness, 1e-9) << name;
            EXPECT_FALSE(crossesItself(outline)) << name;
            EXPECT_GT(areaOf(outline), 0) << name << " turns to the left";
            EXPECT_LE(areaOf(outline), size.thickness * size.width + 1e-9) << name;
        }
    }
}

TEST(Section, HasTheAreaOfPlaneGeometry) { // [calc]
    const double t = 0.75;
    const double w = 2.5;
    constexpr double quarter = std::numbers::pi / 4;
    const auto area = [&](Section section) { return areaOf(sectionOutline(section, t, w)); };
    EXPECT_DOUBLE_EQ(area(Section::squareEdge), t * w);
    EXPECT_NEAR(area(Section::round), quarter * t * w, 0.01 * t * w);
    EXPECT_NEAR(area(Section::quarterRound), quarter * t * w, 0.01 * t * w);
    const double radius = 0.2 * t;
    EXPECT_NEAR(area(Section::easedEdge), t * w - 2 * (1 - quarter) * radius * radius, 1e-3);
    EXPECT_NEAR(area(Section::bullnose), t * (w - t / 2) + 2 * quarter * t * t / 4, 5e-3);
    EXPECT_NEAR(area(Section::cove), t * w * (1 - 0.64 * quarter), 0.01 * t * w);
    EXPECT_NEAR(area(Section::beveled), t * w - 0.3 * w * 0.55 * t / 2, 1e-9);
}

TEST(Section, ThatSpringsLiesBehindItsFaceAgainstWallAndCeiling) {
    for (const double spring : {38.0, 45.0, 52.0}) {
        const double t = 0.6875;
        const double w = 4.625;
        const double turn = spring * std::numbers::pi / 180;
        const Outline outline = sprungOutline(Section::squareEdge, t, w, spring);
        // The face keeps its width, the back loses t cot s at the wall and t tan s at the ceiling
        // (right triangles of height t). [calc]
        double back[2] = {1e9, -1e9};
        for (const SectionPoint& point : outline) {
            EXPECT_GE(point.along, (t - point.out) / std::tan(turn) - 1e-9);
            EXPECT_LE(point.along, w - (t - point.out) * std::tan(turn) + 1e-9);
            if (point.out > 1e-9)
                continue;
            back[0] = std::min(back[0], point.along);
            back[1] = std::max(back[1], point.along);
        }
        EXPECT_NEAR(back[0], t / std::tan(turn), 1e-9);
        EXPECT_NEAR(back[1], w - t * std::tan(turn), 1e-9);
    }
}

TEST(Section, ThatIsTooThickForItsAngleIsATriangle) {
    const Outline outline = sprungOutline(Section::squareEdge, 3, 2, 45);
    EXPECT_NEAR(areaOf(outline), 1, 1e-9) << "half of 2 by 1 [calc]";
}

} // namespace
} // namespace miterbook
