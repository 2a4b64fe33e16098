// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/wall_lengths.h"

#include "plan/place.h"
#include "takeoff/casing_outline.h"

#include <algorithm>
#include <numeric>

namespace miterbook {

namespace {

/// A part of a wall that is still free, by its ends along the wall.
struct FreePart {
    Length from;
    Length to;
    Length taken; ///< by what has no place
    int gaps = 0;

    Length left() const { return to - from - taken; }
};

/// Takes lengths off the walls of one room.
class WallCutter {
public:
    explicit WallCutter(const Room& room)
        : m_room(room) {
        for (const Wall& wall : room.walls) {
            m_walls.emplace_back();
            if (wall.base && wall.length > Length())
                m_walls.back().push_back({{}, wall.length, {}, 0});
        }
    }

    /// Takes what stands from `from` to `to` along a wall.
    void takePlace(std::size_t index, Length from, Length to) {
        std::vector<FreePart> parts;
        for (const FreePart& part : m_walls[index]) {
            if (to <= part.from || from >= part.to) {
                parts.push_back(part);
                continue;
            }
            if (from > part.from)
                parts.push_back({part.from, from, {}, 0});
            if (to < part.to)
                parts.push_back({to, part.to, {}, 0});
        }
        m_walls[index] = std::move(parts);
    }

    /// Takes a door off the wall with this index; what it cannot give off the longest others.
    /// False when the wall is shorter than what it must give.
    bool takeFrom(std::size_t index, Length width) {
        FreePart* part = longestOf(m_walls[index]);
        if (part)
            ++part->gaps;
        Length given;
        for (; part && part->left() > Length() && given < width; part = longestOf(m_walls[index])) {
            const Length some = std::min(part->left(), width - given);
            part->taken += some;
            given += some;
        }
        takeAnywhere(width - given);
        return given == width;
    }

    /// Takes a door off the longest part of any wall.
    void takeDoor(Length width) {
        if (FreePart* part = longest())
            ++part->gaps;
        takeAnywhere(width);
    }

    /// Takes a length off the longest parts, one after the other.
    void takeAnywhere(Length width) {
        while (width > Length()) {
            FreePart* part = longest();
            if (!part || part->left() <= Length()) {
                m_lacking += width;
                return;
            }
            const Length given = std::min(part->left(), width);
            part->taken += given;
            width -= given;
        }
    }

    Length lacking() const { return m_lacking; }

    std::vector<WallLength> take() const {
        std::vector<WallLength> walls;
        for (std::size_t i = 0; i < m_walls.size(); ++i) {
            WallLength& wall = walls.emplace_back();
            for (const FreePart& part : m_walls[i]) {
                if (part.left() > Length())
                    wall.stretches.push_back({part.left(), part.gaps, part.from == Length(),
                        part.to == m_room.walls[i].length});
            }
        }
        return walls;
    }

private:
    static FreePart* longestOf(std::vector<FreePart>& parts) {
        const auto it = std::ranges::max_element(parts, {}, &FreePart::left);
        return it == parts.end() ? nullptr : &*it;
    }

    FreePart* longest() {
        FreePart* longest = nullptr;
        for (std::vector<FreePart>& parts : m_walls) {
            FreePart* part = longestOf(parts);
            if (part && (!longest || part->left() > longest->left()))
                longest = part;
        }
        return longest;
    }

    const Room& m_room;
    std::vector<std::vector<FreePart>> m_walls;
    Length m_lacking;
};

/// Takes everything off the walls of one room, what has its place first.
class RoomGaps {
public:
    RoomGaps(const Room& room, const Tally& tally)
        : m_room(room)
        , m_tally(tally)
        , m_cutter(room) {}

    void takeDoors(const std::vector<DoorGap>& gaps) {
        for (const DoorGap& gap : gaps) {
            if (isSaid(gap) && gap.along > Length())
                takePlaced(gap);
        }
        for (const DoorGap& gap : gaps) {
            if (!isSaid(gap) || gap.along > Length())
                continue;
            const auto index = static_cast<std::size_t>(gap.wall) - 1;
            if (m_room.walls[index].base && !m_cutter.takeFrom(index, gap.width))
                m_lengths.remarks.push_back("the doors in wall " + std::to_string(gap.wall)
                    + " take more than the wall is long; the rest is taken off the other walls.");
        }
        for (const DoorGap& gap : gaps) {
            if (!isSaid(gap))
                m_cutter.takeDoor(gap.width);
        }
    }

    void takePlacedBreaks() {
        for (const BaseBreak& each : m_room.breaks) {
            const auto wall = static_cast<std::size_t>(each.wall);
            if (each.wall > 0 && wall <= m_room.walls.size())
                m_cutter.takePlace(wall - 1, each.from, each.from + each.length);
        }
    }

    WallLengths take(Length elsewhere) {
        m_cutter.takeAnywhere(elsewhere);
        if (m_cutter.lacking() > Length())
            m_lengths.remarks.push_back("doors and wall without base together take "
                + m_tally.text(m_cutter.lacking()) + " more than the walls are long.");
        m_lengths.walls = m_cutter.take();
        return std::move(m_lengths);
    }

private:
    bool isSaid(const DoorGap& gap) const {
        return gap.wall > 0 && static_cast<std::size_t>(gap.wall) <= m_room.walls.size();
    }

    void takePlaced(const DoorGap& gap) {
        const auto index = static_cast<std::size_t>(gap.wall) - 1;
        const Length half = gap.width / 2;
        const Length from = gap.along - half;
        if (gap.along > m_room.walls[index].length)
            m_lengths.remarks.push_back(
                "a door stands past the end of wall " + std::to_string(gap.wall) + ".");
        m_cutter.takePlace(index, from, from + gap.width);
    }

    const Room& m_room;
    const Tally& m_tally;
    WallCutter m_cutter;
    WallLengths m_lengths;
};

} // namespace

DoorGaps::DoorGaps(Tally& tally) {
    for (const Opening& opening : tally.plan().openings) {
        if (opening.isWindow() || opening.count <= 0)
            continue;
        const OpeningTrim trim = openingTrim(opening, tally);
        const Length width = sillWidth(opening);
        const Length cased = trim.outside(width);
        if (opening.room) {
            const Length along = opening.count == 1 ? opening.along : Length();
            auto& gaps = m_gaps[opening.room];
            gaps.insert(gaps.end(), static_cast<std::size_t>(opening.count),
                DoorGap{opening.wall, along, trim.cased() ? cased : width});
        }
        if (opening.otherRoom)
            addOther(opening, trim.cased() && opening.sidesCased >= 2 ? cased : width, tally);
    }
}

void DoorGaps::addOther(const Opening& opening, Length width, const Tally& tally) {
    DoorGap gap{0, {}, width};
    const Room* room = tally.room(opening.room);
    const Room* other = tally.room(opening.otherRoom);
    const auto place = room && other && opening.count == 1 ? placeInOther(*room, *other, opening)
                                                           : std::nullopt;
    if (place) {
        gap.wall = static_cast<int>(place->wall) + 1;
        gap.along = place->along;
    }
    auto& gaps = m_gaps[opening.otherRoom];
    gaps.insert(gaps.end(), static_cast<std::size_t>(opening.count), gap);
}

const std::vector<DoorGap>& DoorGaps::of(Id<Room> room) const {
    static const std::vector<DoorGap> none;
    const auto it = m_gaps.find(room);
    return it == m_gaps.end() ? none : it->second;
}

Length WallLength::net() const {
    return std::accumulate(stretches.begin(), stretches.end(), Length(),
        [](Length sum, const Stretch& stretch) { return sum + stretch.length; });
}

WallLength wholeWall(Length length) {
    WallLength wall;
    if (length > Length())
        wall.stretches.push_back({length, 0, true, true});
    return wall;
}

WallLengths wallsLessDoors(
    const Room& room, const std::vector<DoorGap>& gaps, Breaks breaks, const Tally& tally) {
    if (room.walls.empty())
        return {};
    RoomGaps cutter(room, tally);
    if (breaks == Breaks::asSaid)
        cutter.takePlacedBreaks();
    cutter.takeDoors(gaps);
    return cutter.take(breaks == Breaks::asSaid ? room.baseBreak : Length());
}

} // namespace miterbook
