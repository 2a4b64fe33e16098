// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/geometry.h"

#include "basics/number.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

constexpr double degree = std::numbers::pi / 180.0;

} // namespace

Length scaled(Length length, double factor) {
    return Length::nanometres(std::llround(static_cast<double>(length.nm()) * factor));
}

double miterRun(double cornerDegrees) {
    // A square corner is exact, so that lengths stay on the sixteenths they were typed in.
    return cornerDegrees == 90.0 ? 1.0 : 1.0 / std::tan(cornerDegrees / 2 * degree);
}

double restRun(double cornerDegrees) {
    return cornerDegrees == 90.0 ? 0.0 : 1.0 / std::tan(cornerDegrees * degree);
}

double sawAngleAt(double cornerDegrees) {
    return 90.0 - cornerDegrees / 2;
}

Length longMinusShort(Length faceWidth, double cornerDegrees) {
    return scaled(faceWidth, miterRun(cornerDegrees));
}

SidePoints sidePoints(Length side, double a, double b, Length reveal, Length faceWidth) {
    return sideBetween(side, miterRun(a), miterRun(b), reveal, faceWidth);
}

SidePoints sideBetween(Length side, double runA, double runB, Length reveal, Length faceWidth) {
    const auto innerA = scaled(reveal, runA);
    const auto innerB = scaled(reveal, runB);
    const auto outerA = innerA + scaled(faceWidth, runA);
    const auto outerB = innerB + scaled(faceWidth, runB);
    return {side + std::min(innerA, outerA) + std::min(innerB, outerB),
        side + std::max(innerA, outerA) + std::max(innerB, outerB)};
}

Arch segmentalArch(Length chord, Length rise) {
    const double c = chord.toInches();
    const double h = rise.toInches();
    const double radius = (c * c / 4 + h * h) / (2 * h);
    const double half = std::asin(std::min(1.0, c / (2 * radius)));
    // Past a half circle the arc takes the long way round.
    const double angle = h > radius ? std::numbers::pi - half : half;
    return {Length::fromInches(radius), Length::fromInches(2 * radius * angle)};
}

ArchLeg archLeg(Length height, Length chord, Length rise, Length reveal, Length faceWidth) {
    const double radius = segmentalArch(chord, rise).radius.toInches();
    const double half = chord.toInches() / 2;
    const double centre = height.toInches() + rise.toInches() - radius;
    const auto meets = [&](Length offset) {
        const double d = offset.toInches();
        const double square = (radius + d) * (radius + d) - (half + d) * (half + d);
        return Length::fromInches(centre + std::sqrt(std::max(0.0, square)));
    };
    const Length inner = meets(reveal);
    const Length outer = meets(reveal + faceWidth);
    const double saw = faceWidth > Length()
        ? std::atan2((outer - inner).toInches(), faceWidth.toInches()) / degree
        : 0.0;
    return {{inner, outer}, saw};
}

CompoundCut crownCut(double springDegrees, double cornerDegrees) {
    const double spring = springDegrees * degree;
    const double half = (90.0 - cornerDegrees / 2) * degree;
    return {std::atan(std::sin(spring) * std::tan(half)) / degree,
        std::asin(std::cos(spring) * std::sin(half)) / degree};
}

BalusterSpacing balusters(Length clearRun, Length width, Length largestGap) {
    BalusterSpacing spacing;
    const std::int64_t step = (width + largestGap).nm();
    const std::int64_t over = (clearRun - largestGap).nm();
    if (over > 0)
        spacing.count = static_cast<int>((over + step - 1) / step);
    const auto gapFor = [&](int n) { return (clearRun - width * n) / (n + 1); };
    // A run that divides evenly leaves a gap of just the largest; one more keeps it below.
    if (clearRun - width * spacing.count >= largestGap * (spacing.count + 1))
        ++spacing.count;
    spacing.gap = gapFor(spacing.count);
    return spacing;
}

Length extensionDepth(Length wallThickness, Length frameDepth) {
    if (wallThickness <= Length() || frameDepth <= Length())
        return {};
    return std::max(Length(), wallThickness - frameDepth);
}

Length kerfTaken(Length kerf, bool mitered) {
    if (kerf <= Length())
        return {};
    if (!mitered)
        return kerf;
    const Length step = Length::sixtyFourths(1);
    Length taken = kerf / step * step; // the square of the answer reaches twice the kerf's
    while (Wide(taken.nm()) * taken.nm() < Wide(2) * kerf.nm() * kerf.nm())
        taken += step;
    return taken;
}

} // namespace miterbook
