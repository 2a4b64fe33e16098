// SPDX-License-Identifier: GPL-3.0-or-later
// Angles and lengths of any convex opening, against corners found by meeting lines.
#include "core/cut/saw_kit.h"

#include <array>
#include <cmath>
#include <random>

using namespace miterbook;
using namespace miterbook::kit;

namespace {

struct Corner {
    double x = 0;
    double y = 0;
};

/// A convex polygon on an ellipse, clockwise, its last side level at the bottom.
std::vector<Corner> convexPolygon(std::mt19937& random, int count) {
    std::vector<double> angles;
    for (int i = 0; i < count - 2; ++i)
        angles.push_back((10.0 + random() % 16000 / 100.0) * M_PI / 180);
    std::ranges::sort(angles, std::ranges::greater());
    std::vector<Corner> corners{{-30 * std::cos(0.5), -20 * std::sin(0.5)}};
    for (const double angle : angles)
        corners.push_back({30 * std::cos(angle), 24 * std::sin(angle)});
    corners.push_back({30 * std::cos(0.5), -20 * std::sin(0.5)});
    return corners;
}

double sideLength(const std::vector<Corner>& corners, std::size_t i) {
    const Corner& a = corners[i];
    const Corner& b = corners[(i + 1) % corners.size()];
    return std::hypot(b.x - a.x, b.y - a.y);
}

/// The same polygon with every side moved outward by d: neighbouring lines met anew.
std::vector<Corner> grown(const std::vector<Corner>& corners, double d) {
    const std::size_t n = corners.size();
    const auto line = [&](std::size_t i) {
        const Corner& a = corners[i];
        const Corner& b = corners[(i + 1) % n];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const double nx = -(b.y - a.y) / length; // left of a clockwise walk is outside
        const double ny = (b.x - a.x) / length;
        return std::array{nx, ny, nx * a.x + ny * a.y + d};
    };
    std::vector<Corner> out(n);
    for (std::size_t i = 0; i < n; ++i) {
        const auto p = line((i + n - 1) % n);
        const auto q = line(i);
        const double det = p[0] * q[1] - p[1] * q[0];
        out[i] = {(p[2] * q[1] - p[1] * q[2]) / det, (p[0] * q[2] - p[2] * q[0]) / det};
    }
    return out;
}

double insideAngle(const std::vector<Corner>& corners, std::size_t i) {
    const std::size_t n = corners.size();
    const Corner& at = corners[i];
    const Corner& from = corners[(i + n - 1) % n];
    const Corner& to = corners[(i + 1) % n];
    const double ax = from.x - at.x;
    const double ay = from.y - at.y;
    const double bx = to.x - at.x;
    const double by = to.y - at.y;
    return std::acos((ax * bx + ay * by) / std::hypot(ax, ay) / std::hypot(bx, by)) * 180 / M_PI;
}

} // namespace

TEST(Polygons, AreCutAsTheirGrownOutlinesMeet) {
    std::mt19937 random(31);
    int tested = 0;
    while (tested < 60) {
        const auto corners = convexPolygon(random, 4 + static_cast<int>(random() % 4));
        const std::size_t n = corners.size();
        Opening opening = window(in(40), in(40));
        opening.shape = Shape::polygon;
        double shortest = 1e9;
        double sharpest = 180;
        for (std::size_t i = 0; i < n; ++i) {
            const double angle = insideAngle(corners, (i + 1) % n);
            shortest = std::min(shortest, sideLength(corners, i));
            sharpest = std::min(sharpest, angle);
            opening.sides.push_back({Length::fromInches(sideLength(corners, i)),
                Angle::hundredths(std::lround(angle * 100))});
        }
        if (shortest < 3 || sharpest < 30)
            continue;
        ++tested;
        SawHouse house;
        house.add(opening, "W1");
        const auto inner = grown(corners, 3.0 / 16);
        const auto outer = grown(corners, 3.0 / 16 + 3.25);
        const auto pieces = house.pieces();
        ASSERT_EQ(pieces.size(), n);
        for (std::size_t i = 0; i < n; ++i) {
            // Angles are typed to a hundredth of a degree, which is worth some thousandths of an
            // inch.
            EXPECT_NEAR(pieces[i].shortPoint.toInches(), sideLength(inner, i), 0.01);
            EXPECT_NEAR(pieces[i].longPoint.toInches(), sideLength(outer, i), 0.02);
            EXPECT_NEAR(
                pieces[i].right.sawAngle, 90 - insideAngle(corners, (i + 1) % n) / 2, 0.006);
        }
    }
}

TEST(Arches, HaveLegsThatReachTheRing) {
    // The leg's points lie on circles about the arch's centre, R + r and R + r + c [calc].
    for (const int rise : {4, 8, 12}) {
        SawHouse house;
        Opening opening = window(in(36), in(48), TrimStyle::threeSided);
        opening.shape = Shape::arch;
        opening.rise = in(rise);
        house.add(opening, "W1");
        const double radius = (36.0 * 36 / 4 + rise * rise) / (2.0 * rise);
        const double centre = 48 + rise - radius;
        for (const SawPiece& piece : house.pieces()) {
            const double inner = piece.shortPoint.toInches() - centre;
            const double outer = piece.longPoint.toInches() - centre;
            EXPECT_NEAR(std::hypot(18 + 3.0 / 16, inner), radius + 3.0 / 16, 1e-6);
            EXPECT_NEAR(std::hypot(18 + 3.0 / 16 + 3.25, outer), radius + 3.0 / 16 + 3.25, 1e-6);
        }
    }
}
