// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/wall_lengths.h"

#include "takeoff/casing_outline.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Takes lengths off the walls of one room.
class WallCutter {
public:
    explicit WallCutter(const Room& room) {
        m_walls.reserve(room.walls.size());
        for (const Wall& wall : room.walls)
            m_walls.push_back({wall.base ? wall.length : Length(), 0});
    }

    /// Takes a door off the wall with this index; what it cannot give off the longest others.
    /// False when the wall is shorter than what it must give.
    bool takeFrom(std::size_t index, Length width) {
        WallLength& wall = m_walls[index];
        ++wall.gaps;
        const Length given = std::min(wall.net, width);
        wall.net -= given;
        takeAnywhere(width - given);
        return given == width;
    }

    /// Takes a length off the longest walls, one after the other.
    void takeAnywhere(Length width) {
        while (width > Length()) {
            const std::size_t index = longest();
            if (index >= m_walls.size() || m_walls[index].net <= Length()) {
                m_lacking += width;
                return;
            }
            const Length given = std::min(m_walls[index].net, width);
            m_walls[index].net -= given;
            width -= given;
        }
    }

    std::size_t longest() const {
        const auto it = std::ranges::max_element(m_walls, {}, &WallLength::net);
        return static_cast<std::size_t>(it - m_walls.begin());
    }

    Length lacking() const { return m_lacking; }
    std::vector<WallLength> take() { return std::move(m_walls); }

private:
    std::vector<WallLength> m_walls;
    Length m_lacking;
};

} // namespace

DoorGaps::DoorGaps(Tally& tally) {
    for (const Opening& opening : tally.plan().openings) {
        if (opening.isWindow() || opening.count <= 0)
            continue;
        const OpeningTrim trim = openingTrim(opening, tally);
        const Length width = sillWidth(opening);
        const Length cased = trim.outside(width);
        const auto add = [&](Id<Room> room, int wall, bool isCased) {
            if (room)
                m_gaps[room].insert(m_gaps[room].end(), static_cast<std::size_t>(opening.count),
                    DoorGap{wall, isCased ? cased : width});
        };
        add(opening.room, opening.wall, trim.cased());
        add(opening.otherRoom, 0, trim.cased() && opening.sidesCased >= 2);
    }
}

const std::vector<DoorGap>& DoorGaps::of(Id<Room> room) const {
    static const std::vector<DoorGap> none;
    const auto it = m_gaps.find(room);
    return it == m_gaps.end() ? none : it->second;
}

WallLengths wallsLessDoors(
    const Room& room, const std::vector<DoorGap>& gaps, Length elsewhere, const Tally& tally) {
    WallLengths lengths;
    if (room.walls.empty())
        return lengths;
    WallCutter cutter(room);
    const auto isSaid = [&](const DoorGap& gap) {
        return gap.wall > 0 && static_cast<std::size_t>(gap.wall) <= room.walls.size();
    };
    for (const DoorGap& gap : gaps) {
        if (!isSaid(gap))
            continue;
        const auto index = static_cast<std::size_t>(gap.wall) - 1;
        if (room.walls[index].base && !cutter.takeFrom(index, gap.width))
            lengths.remarks.push_back("the doors in wall " + std::to_string(gap.wall)
                + " take more than the wall is long; the rest is taken off the other walls.");
    }
    for (const DoorGap& gap : gaps) {
        if (!isSaid(gap))
            cutter.takeFrom(cutter.longest(), gap.width);
    }
    cutter.takeAnywhere(elsewhere);
    if (cutter.lacking() > Length())
        lengths.remarks.push_back("doors and wall without base together take "
            + tally.text(cutter.lacking()) + " more than the walls are long.");
    lengths.walls = cutter.take();
    return lengths;
}

} // namespace miterbook
