// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/walking.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

struct Flat {
    double x = 0;
    double y = 0;
};

Flat flat(Spot spot) {
    return {spot.x.toInches(), spot.y.toInches()};
}

Spot spotOf(Flat at) {
    return {Length::fromInches(at.x), Length::fromInches(at.y)};
}

double walked(Flat from, const std::vector<Carry>& carries) {
    double sum = 0;
    for (const Carry& carry : carries) {
        const Flat to = flat(carry.to);
        sum += 2.0 * carry.trips * std::hypot(to.x - from.x, to.y - from.y);
    }
    return sum;
}

Flat between(Flat a, Flat b, double share) {
    return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
}

/// The least walked along a straight line; what is walked is convex, so thirds close in on it.
Flat bestOnLine(Flat a, Flat b, const std::vector<Carry>& carries) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 100; ++i) {
        const double third = (high - low) / 3;
        if (walked(between(a, b, low + third), carries)
            <= walked(between(a, b, high - third), carries))
            high -= third;
        else
            low += third;
    }
    return between(a, b, (low + high) / 2);
}

/// Whether a place lies inside a room, by how often a line from it crosses the walls.
bool isInside(Flat at, const std::vector<Spot>& room) {
    bool inside = false;
    for (std::size_t i = 0, k = room.size() - 1; i < room.size(); k = i++) {
        const Flat a = flat(room[i]);
        const Flat b = flat(room[k]);
        if ((a.y > at.y) != (b.y > at.y) && at.x < (b.x - a.x) * (at.y - a.y) / (b.y - a.y) + a.x)
            inside = !inside;
    }
    return inside;
}

/// The least walked anywhere: thirds in one direction of the best in the other.
Flat bestAnywhere(const std::vector<Carry>& carries) {
    Flat least = flat(carries.front().to);
    Flat most = least;
    for (const Carry& carry : carries) {
        const Flat at = flat(carry.to);
        least = {std::min(least.x, at.x), std::min(least.y, at.y)};
        most = {std::max(most.x, at.x), std::max(most.y, at.y)};
    }
    const auto across = [&](double x) { return bestOnLine({x, least.y}, {x, most.y}, carries); };
    for (int i = 0; i < 60; ++i) {
        const double third = (most.x - least.x) / 3;
        if (walked(across(least.x + third), carries) <= walked(across(most.x - third), carries))
            most.x -= third;
        else
            least.x += third;
    }
    return across((least.x + most.x) / 2);
}

Flat middleOf(const std::vector<Spot>& room) {
    Flat sum;
    for (const Spot corner : room) {
        sum.x += flat(corner).x;
        sum.y += flat(corner).y;
    }
    const double count = static_cast<double>(std::max<std::size_t>(room.size(), 1));
    return {sum.x / count, sum.y / count};
}

} // namespace

Length distanceBetween(Spot a, Spot b) {
    return Length::fromInches(
        std::hypot(b.x.toInches() - a.x.toInches(), b.y.toInches() - a.y.toInches()));
}

Length carryingDistance(Spot from, const std::vector<Carry>& carries) {
    return Length::fromInches(walked(flat(from), carries));
}

Spot bestSpot(const std::vector<Spot>& room, const std::vector<Carry>& carries) {
    if (carries.empty() || room.size() < 3)
        return spotOf(middleOf(room));
    const Flat free = bestAnywhere(carries);
    if (isInside(free, room))
        return spotOf(free);
    Flat best = flat(room.front());
    for (std::size_t i = 0; i < room.size(); ++i) {
        const Flat along = bestOnLine(flat(room[i]), flat(room[(i + 1) % room.size()]), carries);
        if (walked(along, carries) < walked(best, carries))
            best = along;
    }
    return spotOf(best);
}

} // namespace miterbook
