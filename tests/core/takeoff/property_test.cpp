// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace miterbook {
namespace {

using namespace kit;

class Random {
public:
    explicit Random(unsigned seed)
        : m_engine(seed) {}
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_engine); }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    Length length(int lowInches, int highInches) {
        return Length::sixteenths(whole(lowInches * 16, highInches * 16));
    }

private:
    std::mt19937 m_engine;
};

TEST(Frames, OppositeSidesAreEqualAndTheTotalIsThePerimeterAndEightTimesRevealAndFace) {
    Random random(11);
    for (int i = 0; i < 300; ++i) {
        Opening opening = window(random.length(12, 180), random.length(12, 180));
        opening.reveal = Length::thirtySeconds(random.whole(1, 16));
        const Takeoff takeoff = takeOne(opening);
        EXPECT_EQ(piece(takeoff, "head").longPoint, piece(takeoff, "sill").longPoint);
        EXPECT_EQ(piece(takeoff, "left leg").longPoint, piece(takeoff, "right leg").longPoint);
        EXPECT_EQ(piece(takeoff, "left leg").shortPoint, piece(takeoff, "right leg").shortPoint);
        // trade.md section 1: casing at long points 2(w + h) + 8r + 8c.
        EXPECT_EQ(runningLength(takeoff, profiles.casing),
            2 * (opening.width + opening.height) + 8 * opening.reveal + 8 * in(3, 4));
    }
}

using Point = std::array<double, 2>;

/// The corner of the outline at distance `off` outside a convex polygon: where the offset lines of
/// the two sides meeting there cross. Worked out from coordinates alone, without corner angles.
Point offsetCorner(const Point& before, const Point& at, const Point& after, double off) {
    const auto outward = [](const Point& a, const Point& b) {
        const double length = std::hypot(b[0] - a[0], b[1] - a[1]);
        return Point{-(b[1] - a[1]) / length, (b[0] - a[0]) / length};
    };
    const Point n = outward(before, at);
    const Point m = outward(at, after);
    // Solve n.p = n.at + off, m.p = m.at + off.
    const double c = n[0] * at[0] + n[1] * at[1] + off;
    const double d = m[0] * at[0] + m[1] * at[1] + off;
    const double det = n[0] * m[1] - n[1] * m[0];
    return {(c * m[1] - n[1] * d) / det, (n[0] * d - c * m[0]) / det};
}

/// Random convex polygon inscribed in an ellipse, clockwise.
std::vector<Point> randomPolygon(Random& random, int corners) {
    std::vector<double> turns;
    for (int i = 0; i < corners; ++i)
        turns.push_back((i + random.real(-0.3, 0.3)) * 2 * std::numbers::pi / corners);
    std::vector<Point> points;
    const double a = random.real(30, 90);
    const double b = random.real(30, 90);
    for (const double turn : turns)
        points.push_back({-a * std::cos(turn), b * std::sin(turn)});
    return points;
}

double distance(const Point& a, const Point& b) {
    return std::hypot(b[0] - a[0], b[1] - a[1]);
}

double insideAngle(const Point& before, const Point& at, const Point& after) {
    const Point u{before[0] - at[0], before[1] - at[1]};
    const Point v{after[0] - at[0], after[1] - at[1]};
    const double cosine = (u[0] * v[0] + u[1] * v[1])
        / (distance(before, at) * distance(at, after));
    return std::acos(cosine) * 180 / std::numbers::pi;
}

TEST(Polygons, PointsAreWhereTheOffsetOutlinesCross) {
    Random random(12);
    for (int round = 0; round < 200; ++round) {
        const int n = random.whole(3, 8);
        const std::vector<Point> at = randomPolygon(random, n);
        const auto corner = [&](int i) { return at[static_cast<std::size_t>((i + 2 * n) % n)]; };
        Opening opening = window({}, {});
        opening.shape = Shape::polygon;
        for (int i = 0; i < n; ++i)
            opening.sides.push_back({Length::fromInches(distance(corner(i), corner(i + 1))),
                Angle::hundredths(
                    std::lround(insideAngle(corner(i), corner(i + 1), corner(i + 2)) * 100))});
        const Takeoff takeoff = takeOne(opening);
        ASSERT_EQ(std::ssize(takeoff.pieces), n);
        for (int i = 0; i < n; ++i) {
            const auto edge = [&](double off) {
                return distance(offsetCorner(corner(i - 1), corner(i), corner(i + 1), off),
                    offsetCorner(corner(i), corner(i + 1), corner(i + 2), off));
            };
            const Piece& piece = takeoff.pieces[static_cast<std::size_t>(i)];
            // Angles are kept to a hundredth of a degree: 0.005 in over the face of the casing.
            EXPECT_NEAR(piece.shortPoint.toInches(), edge(0.1875), 0.005) << round << " side " << i;
            EXPECT_NEAR(piece.longPoint.toInches(), edge(0.1875 + 3.25), 0.01) << round;
        }
    }
}

TEST(Base, IsThePerimeterLessItsDoorsWhicheverWallsTheyStandIn) {
    Random random(13);
    for (int round = 0; round < 300; ++round) {
        Room den = room({});
        Length perimeter;
        for (int i = random.whole(3, 8); i > 0; --i) {
            den.walls.emplace_back().length = random.length(60, 400);
            perimeter += den.walls.back().length;
        }
        den.baseBreak = random.length(0, 40);
        std::vector<Opening> doors;
        Length gaps;
        for (int i = random.whole(0, 3); i > 0; --i) {
            Opening opening = door(random.length(20, 40));
            opening.id = Id<Opening>(i);
            opening.room = den.id;
            opening.wall = random.whole(0, static_cast<int>(den.walls.size()));
            gaps += opening.width + 2 * in(0, 3) + 2 * in(3, 4);
            doors.push_back(opening);
        }
        const Takeoff takeoff = takeOne(den, doors);
        const Length expected = perimeter - gaps - den.baseBreak;
        Length net;
        Length cut;
        int splices = 0;
        for (const RunCorners& run : takeoff.runs) {
            net += run.net;
            splices += run.splices;
        }
        for (const Piece& each : takeoff.pieces) {
            if (each.work == PieceOfWork::base)
                cut += each.longPoint;
        }
        EXPECT_EQ(net, std::max(expected, Length())) << round;
        EXPECT_EQ(cut, net + splices * in(1)) << round;
    }
}

TEST(Takeoffs, AreTheSameEveryTime) {
    Opening opening = window(in(36), in(60), TrimStyle::stoolAndApron);
    EXPECT_EQ(takeOne(opening), takeOne(opening));
}

} // namespace
} // namespace miterbook
