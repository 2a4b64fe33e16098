// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/opening_units.h"

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
    std::map<Id<Level>, int> counts;
    for (Opening opening : whole.openings) {
        opening.level = levelOf(opening, whole);
        if ((level && opening.level != level) || opening.sidesCased <= 0)
            continue;
        for (int unit = 1; unit <= opening.count; ++unit) {
            const auto it = byOpening.find({opening.id, unit});
            OpeningUnit made;
            made.opening = opening;
            made.unit = unit;
            made.name = unitName(markOf(opening), unit, opening.count);
            if (it != byOpening.end())
                made.measure = *it->second;
            const int asPlanned = ++counts[opening.level] * placeStep;
            made.place = made.measure.position > 0 ? made.measure.position : asPlanned;
            made.measure.opening = opening.id;
            made.measure.unit = unit;
            units.push_back(std::move(made));
        }
    }
    const auto levelAt = [&](Id<Level> id) {
        return std::ranges::find(whole.levels, id, &Level::id) - whole.levels.begin();
    };
    // At the same place, one that was put there comes before one that only stands there by the
    // plan.
    const auto order = [&](const OpeningUnit& unit) {
        return std::tuple(
            levelAt(unit.opening.level), unit.place, unit.measure.position > 0 ? 0 : 1);
    };
    std::ranges::stable_sort(units, {}, order);
    counts.clear();
    for (OpeningUnit& unit : units)
        unit.number = ++counts[unit.opening.level];
    return units;
}

int placeFor(const std::vector<OpeningUnit>& units, const OpeningUnit& unit, int number) {
    std::vector<int> places{0};
    for (const OpeningUnit& each : units) {
        if (each.opening.level == unit.opening.level)
            places.push_back(each.place);
    }
    const int count = static_cast<int>(places.size()) - 1;
    const int wanted = std::clamp(number, 1, std::max(count, 1));
    if (count == 0 || wanted == unit.number)
        return unit.place;
    places.push_back(places.back() + 3 * placeStep);
    // A third of the way, so that one that moves up and one that moves down meet in order.
    const auto at = static_cast<std::size_t>(wanted);
    return wanted < unit.number ? places[at] - (places[at] - places[at - 1]) / 3
                                : places[at] + (places[at + 1] - places[at]) / 3;
}

} // namespace miterbook
