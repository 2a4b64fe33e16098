// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten_places.h"

#include "plan/outline_math.h"
#include "plan/place.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// An opening's stretch of its wall, jamb inside.
struct Standing {
    const Opening* opening = nullptr;
    Length from;
    Length to;
};

using Walls = std::map<std::pair<Id<Room>, int>, std::vector<Standing>>;

Walls standingIn(Tally& tally) {
    Walls walls;
    for (const Opening& opening : tally.plan().openings) {
        const Room* room = tally.room(opening.room);
        if (!room || opening.count != 1 || !placeIn(*room, opening))
            continue;
        const Length half = opening.width / 2;
        walls[{opening.room, opening.wall}].push_back(
            {&opening, opening.along - half, opening.along + half});
    }
    return walls;
}

void lookAtWall(std::vector<Standing>& wall, Length length, Tally& tally) {
    std::ranges::sort(wall, {}, &Standing::from);
    for (std::size_t i = 0; i < wall.size(); ++i) {
        const Source source = tally.sourceOf(*wall[i].opening);
        if (wall[i].from < Length() || wall[i].to > length)
            tally.warn(source, source.name + " reaches past the end of its wall.");
        if (i > 0 && wall[i].from < wall[i - 1].to)
            tally.warn(source,
                source.name + " and " + tally.sourceOf(*wall[i - 1].opening).name
                    + " stand in one another.");
    }
}

struct Bounds {
    PlanPoint least;
    PlanPoint most;
};

Bounds boundsOf(const Outline& outline) {
    Bounds bounds{outline.front(), outline.front()};
    for (const PlanPoint& corner : outline) {
        bounds.least = {std::min(bounds.least.x, corner.x), std::min(bounds.least.y, corner.y)};
        bounds.most = {std::max(bounds.most.x, corner.x), std::max(bounds.most.y, corner.y)};
    }
    return bounds;
}

bool apart(const Bounds& a, const Bounds& b) {
    return a.most.x <= b.least.x || b.most.x <= a.least.x || a.most.y <= b.least.y
        || b.most.y <= a.least.y;
}

/// Whether walls of two rooms cross; rooms that touch or stand one within the other do not.
bool wallsCross(const Outline& a, const Outline& b) {
    for (std::size_t i = 0; i < a.size(); ++i) {
        const PlanPoint p = a[i];
        const PlanPoint q = a[i + 1 == a.size() ? 0 : i + 1];
        for (std::size_t k = 0; k < b.size(); ++k) {
            const PlanPoint r = b[k];
            const PlanPoint s = b[k + 1 == b.size() ? 0 : k + 1];
            if (sideOf(p, q, r) * sideOf(p, q, s) < 0 && sideOf(r, s, p) * sideOf(r, s, q) < 0)
                return true;
        }
    }
    return false;
}

void lookAtOverlaps(Tally& tally) {
    struct Drawn {
        const Room* room;
        Bounds bounds;
    };
    std::vector<Drawn> drawn;
    for (const Room& room : tally.plan().rooms) {
        if (!room.outline.empty())
            drawn.push_back({&room, boundsOf(room.outline)});
    }
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        for (std::size_t k = i + 1; k < drawn.size(); ++k) {
            if (drawn[i].room->level != drawn[k].room->level
                || apart(drawn[i].bounds, drawn[k].bounds)
                || !wallsCross(drawn[i].room->outline, drawn[k].room->outline))
                continue;
            const Source source = tally.sourceOf(*drawn[k].room);
            tally.warn(source,
                source.name + " lies over " + tally.sourceOf(*drawn[i].room).name
                    + " on the drawing.");
        }
    }
}

/// Said once for a plan: openings are placed one after the other.
void lookForUnplaced(Tally& tally) {
    int placed = 0;
    int without = 0;
    const Opening* first = nullptr;
    for (const Opening& opening : tally.plan().openings) {
        const Room* room = tally.room(opening.room);
        if (room && !room->outline.empty() && placeIn(*room, opening))
            ++placed;
        else if (++without == 1)
            first = &opening;
    }
    if (placed == 0 || !first)
        return;
    const Source source = tally.sourceOf(*first);
    tally.warn(source,
        without == 1 ? source.name + " has no place on the drawing."
                     : source.name + " and " + std::to_string(without - 1)
                + (without == 2 ? " more opening have" : " more openings have")
                + " no place on the drawing.");
}

} // namespace

void lookAtPlaces(Tally& tally) {
    Walls walls = standingIn(tally);
    for (auto& [place, wall] : walls) {
        const auto index = static_cast<std::size_t>(place.second) - 1;
        lookAtWall(wall, tally.room(place.first)->walls[index].length, tally);
    }
    lookAtOverlaps(tally);
    lookForUnplaced(tally);
}

} // namespace miterbook
