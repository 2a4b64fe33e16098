// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/redraw.h"
#include "stages/plan/drawing/room_gestures.h"
#include "stages/plan/opening_specs.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Left and right ends of everything drawn in the plan.
std::optional<std::pair<Length, Length>> reachOf(const PlanRows& rows) {
    std::optional<std::pair<Length, Length>> ends;
    const auto take = [&](const std::vector<PlanPoint>& points) {
        for (const PlanPoint& point : points) {
            if (!ends)
                ends = {point.x, point.x};
            ends->first = std::min(ends->first, point.x);
            ends->second = std::max(ends->second, point.x);
        }
    };
    for (const auto& [id, room] : rows.of<Room>())
        take(room.outline);
    return ends;
}

/// The room a row refers to, as the row's own variant or else the base plan has it.
const Room* roomFor(const PlanRows& rows, Id<Room> id, Id<Variant> variant) {
    for (const auto& [key, room] : rows.of<Room>()) {
        if (variant && room.variant == variant && room.replaces == id)
            return &room;
    }
    return rows.of<Room>().find(id);
}

/// Copies what stands on a level to another one.
class LevelCopy {
public:
    LevelCopy(const DrawnLevel& level, IdSource& ids, EditBuilder& edit, Id<Level> made)
        : m_level(level)
        , m_ids(ids)
        , m_edit(edit)
        , m_made(made) {}

    void copyRooms() {
        int n = 0;
        for (const Room& from : m_level.rooms()) {
            if (from.removed)
                continue;
            Room room = from;
            room.mark = newRoomMark(m_level.sheet(), n++);
            m_rooms[rowKey(from)] = put(std::move(room));
        }
    }

    void copyOpenings() {
        int windows = 0;
        int doors = 0;
        for (const Opening& from : m_level.openings()) {
            if (from.removed)
                continue;
            Opening opening = from;
            opening.otherRoom = roomOf(from.otherRoom);
            int& count = from.isWindow() ? windows : doors;
            opening.mark = newOpeningMark(m_level.sheet(), from.isWindow(), count++);
            put(std::move(opening));
        }
    }

    template <Overlaid Row>
    void copyOthers() {
        for (const Row& row : shownRows(m_level.sheet().of<Row>(), m_level.target().variant)) {
            if (!row.removed && row.level == m_level.level())
                put(row);
        }
    }

private:
    Id<Room> roomOf(Id<Room> id) const {
        const auto it = m_rooms.find(id.value());
        return it == m_rooms.end() ? Id<Room>() : it->second;
    }

    template <Overlaid Row>
    Id<Row> put(Row row) {
        row.id = m_ids.next<Row>();
        row.variant = m_level.target().variant;
        row.replaces = {};
        row.level = m_made;
        row.position = nextPosition(m_level.sheet().of<Row>()) + m_count++;
        if constexpr (requires { row.room; })
            row.room = roomOf(row.room);
        const Id<Row> id = row.id;
        m_edit.put(std::move(row));
        return id;
    }

    const DrawnLevel& m_level;
    IdSource& m_ids;
    EditBuilder& m_edit;
    Id<Level> m_made;
    std::map<std::int64_t, Id<Room>> m_rooms;
    int m_count = 0;
};

} // namespace

Result<Edit> planMirrored(const DrawnLevel& level, IdSource&) {
    const PlanRows& rows = level.sheet();
    const auto ends = reachOf(rows);
    if (!ends)
        return badInput("There is nothing drawn to be mirrored.");
    const Length axis = (ends->first + ends->second) / 2;
    EditBuilder edit(level.book(), "Mirror the plan left for right");
    for (const auto& [id, opening] : rows.of<Opening>()) {
        const Room* room = roomFor(rows, opening.room, opening.variant);
        edit.put(mirrored(opening, room ? *room : Room()));
    }
    for (const auto& [id, room] : rows.of<Room>())
        edit.put(mirrored(room, axis));
    const auto mirrorPoints = [&](const auto& table) {
        for (const auto& [id, row] : table) {
            auto other = row;
            for (PlanPoint& point : pointsOf(other))
                point.x = axis + axis - point.x;
            edit.put(std::move(other));
        }
    };
    mirrorPoints(rows.of<OtherWork>());
    mirrorPoints(rows.of<Stair>());
    return edit.take();
}

Result<Edit> levelRepeated(const DrawnLevel& level, IdSource& ids) {
    const auto levels = shownRows(level.sheet().of<Level>(), level.target().variant);
    const auto it = std::ranges::find(levels, level.level().value(), rowKey<Level>);
    if (it == levels.end())
        return badInput("Choose a level first.");
    Level made = *it;
    made.id = ids.next<Level>();
    made.variant = level.target().variant;
    made.replaces = {};
    made.name += " again";
    made.upper = true;
    made.position = nextPosition(level.sheet().of<Level>());
    EditBuilder edit(level.book(), "Repeat level " + it->name);
    edit.put(made);
    LevelCopy copy(level, ids, edit, made.id);
    copy.copyRooms();
    copy.copyOpenings();
    copy.copyOthers<Closet>();
    copy.copyOthers<WallTreatment>();
    copy.copyOthers<OtherWork>();
    return edit.take();
}

Result<Edit> typedRoomsLaidOut(const DrawnLevel& level, IdSource& ids) {
    constexpr Length apart = Length::feet(4);
    constexpr Length widest = Length::feet(80);
    PlanPoint at;
    for (const Outline* outline : level.outlines()) {
        for (const PlanPoint& corner : *outline)
            at.y = std::max(at.y, corner.y + apart);
    }
    EditBuilder edit(level.book(), "Put the typed rooms on the drawing");
    Length tallest;
    for (const Room& each : level.rooms()) {
        auto outline = each.removed || !each.outline.empty() ? std::nullopt
                                                             : layOut(each.walls, PlanPoint());
        if (!outline)
            continue;
        PlanPoint least = outline->front();
        PlanPoint most = least;
        for (const PlanPoint& corner : *outline) {
            least = {std::min(least.x, corner.x), std::min(least.y, corner.y)};
            most = {std::max(most.x, corner.x), std::max(most.y, corner.y)};
        }
        if (at.x > Length() && at.x + (most.x - least.x) > widest) {
            at = {Length(), at.y + tallest + apart};
            tallest = {};
        }
        Room room = each;
        if (auto drawn = setOutline(room, moved(*outline, at - least)); !drawn)
            return drawn.error();
        at.x += most.x - least.x + apart;
        tallest = std::max(tallest, most.y - least.y);
        storeRow(edit, ids, level.target(), std::move(room));
    }
    Edit done = edit.take();
    if (done.empty())
        return badInput("No typed room on this level has walls that come round and no place yet.");
    return done;
}

} // namespace miterbook
