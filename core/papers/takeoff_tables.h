// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/figures.h"
#include "papers/paper.h"
#include "takeoff/totals.h"

#include <map>
#include <span>

namespace miterbook {

/// Where the rows of a plan stand in a list of places, so that pieces and runs can be put under the
/// place that their numbers are counted in.
class PlaceFinder {
public:
    explicit PlaceFinder(const std::vector<PlaceTotals>& places);
    /// Index of the place of a source; -1 where it counts in none of them.
    std::ptrdiff_t placeOf(const Source& source) const;

private:
    std::map<Origins, std::size_t> m_places;
};

/// Places of one level, which follow each other, and the level's name.
struct LevelPlaces {
    std::string name;
    std::size_t first = 0;
    std::span<const PlaceTotals> places;
};
std::vector<LevelPlaces> byLevel(const std::vector<PlaceTotals>& places, const WholePlan& plan);

/// What is asked to write the tables of a takeoff.
struct TakeoffTables {
    const JobFigures& figures;
    const PriceBook& prices;
    const std::vector<PlaceTotals>& places;
    PlaceFinder finder{places};

    /// Sums over all places, by piece of work.
    PaperTable sums() const;
    /// Room by room: each amount and the rows it comes from.
    PaperTable amounts(const LevelPlaces& level) const;
    /// Room by room: net feet, corners and splices of each run.
    PaperTable runs(const LevelPlaces& level) const;
    /// Room by room: every piece to be cut, from short to long point.
    PaperTable pieces(const LevelPlaces& level) const;

private:
    std::string roomName(const PlaceTotals& place) const;
};

} // namespace miterbook
