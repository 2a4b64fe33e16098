// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/opening_units.h"

#include "cut/measured_opening.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// What an opening is called where it has no mark.
std::string markOf(const Opening& opening) {
    if (!opening.mark.empty())
        return opening.mark;
    return opening.isWindow() ? "window without a mark" : "door without a mark";
}

/// An opening that stands in a room goes by the room's level.
Id<Level> levelOf(const Opening& opening, const WholePlan& whole) {
    const Room* room = whole.room(opening.room);
    return opening.level || !room ? opening.level : room->level;
}

} // namespace

std::vector<OpeningUnit> openingUnits(
    const WholePlan& whole, const Table<Measure>& measures, Id<Level> level) {
    std::map<std::pair<Id<Opening>, int>, const Measure*> byOpening;
    for (const auto& [id, measure] : measures)
        byOpening.emplace(std::pair(measure.opening, measure.unit), &measure);
    std::vector<OpeningUnit> units;
    for (Opening opening : whole.openings) {
        opening.level = levelOf(opening, whole);
        if ((level && opening.level != level) || opening.sidesCased <= 0)
            continue;
        for (int unit = 1; unit <= opening.count; ++unit) {
            const auto it = byOpening.find({opening.id, unit});
            OpeningUnit made{opening, unit, unitName(markOf(opening), unit, opening.count), {}};
            if (it != byOpening.end())
                made.measure = *it->second;
            made.measure.opening = opening.id;
            made.measure.unit = unit;
            units.push_back(std::move(made));
        }
    }
    const auto levelAt = [&](Id<Level> id) {
        return std::ranges::find(whole.levels, id, &Level::id) - whole.levels.begin();
    };
    const auto placeOf = [](const OpeningUnit& unit) {
        return unit.measure.position > 0 ? unit.measure.position : 1'000'000;
    };
    std::ranges::stable_sort(units, [&](const OpeningUnit& a, const OpeningUnit& b) {
        return std::tuple(levelAt(a.opening.level), placeOf(a))
            < std::tuple(levelAt(b.opening.level), placeOf(b));
    });
    return units;
}

} // namespace miterbook
