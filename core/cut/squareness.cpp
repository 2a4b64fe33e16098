// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/squareness.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

constexpr double radiansPerDegree = std::numbers::pi / 180.0;

} // namespace

OutOfSquare outOfSquare(Length width, Length height, Length d1, Length d2, Length faceWidth) {
    OutOfSquare out;
    if (width <= Length() || height <= Length() || d1 <= Length() || d2 <= Length())
        return out;
    const double sum = d1.toInches() + d2.toInches();
    const double difference = std::abs(d1.toInches() - d2.toInches());
    const double sine = sum * difference / (4 * width.toInches() * height.toInches());
    const double skew = std::asin(std::min(1.0, sine));
    out.skewDegrees = skew / radiansPerDegree;
    out.runOut = Length::fromInches(std::max(width, height).toInches() * std::tan(skew));
    out.miterGap = miterGapFor(faceWidth, out.skewDegrees);
    return out;
}

Length bowOf(Length oneEnd, Length middle, Length otherEnd) {
    if (oneEnd <= Length() || middle <= Length() || otherEnd <= Length())
        return {};
    return middle - (oneEnd + otherEnd) / 2;
}

Length miterGapFor(Length faceWidth, double degreesOff) {
    return Length::fromInches(
        faceWidth.toInches() * std::numbers::sqrt2 * std::abs(degreesOff) * radiansPerDegree);
}

} // namespace miterbook
