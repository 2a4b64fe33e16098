// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/casing_outline.h"

namespace miterbook {

namespace {

std::vector<OutlineSide> rectangleOutline(Length width, Length height) {
    if (width <= Length() || height <= Length())
        return {};
    return {{"left leg", height, 90, 90, true}, {"head", width},
        {"right leg", height, 90, 90, true}, {"sill", width}};
}

std::vector<OutlineSide> polygonOutline(const std::vector<PolygonSide>& sides) {
    if (sides.size() < 3)
        return {};
    std::vector<OutlineSide> outline;
    outline.reserve(sides.size());
    const std::size_t last = sides.size() - 1;
    for (std::size_t i = 0; i <= last; ++i) {
        if (sides[i].length <= Length() || sides[i].angle <= Angle())
            return {};
        OutlineSide side;
        side.name = i == last ? "sill" : "side " + std::to_string(i + 1);
        side.length = sides[i].length;
        side.nearCorner = sides[i == 0 ? last : i - 1].angle.toDegrees();
        side.farCorner = sides[i].angle.toDegrees();
        side.leg = i == 0 || i + 1 == last;
        outline.push_back(std::move(side));
    }
    return outline;
}

} // namespace

std::vector<OutlineSide> outlineOf(const Opening& opening) {
    return opening.shape == Shape::polygon ? polygonOutline(opening.sides)
                                           : rectangleOutline(opening.width, opening.height);
}

Length sillWidth(const Opening& opening) {
    return opening.shape == Shape::polygon && !opening.sides.empty() ? opening.sides.back().length
                                                                     : opening.width;
}

} // namespace miterbook
