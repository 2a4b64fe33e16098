// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/marks.h"
#include "plan/redraw.h"
#include "stages/plan/drawing/room_gestures.h"
#include "stages/plan/opening_specs.h"

#include <algorithm>

namespace miterbook {

namespace {

bool isAmong(const std::vector<DrawnItem>& items, DrawnItem::Kind kind, std::int64_t key) {
    return std::ranges::count(items, DrawnItem{kind, key}) > 0;
}

std::string howMany(std::size_t count) {
    return count == 1 ? "one thing" : std::to_string(count) + " things";
}

template <class Row>
Row movedRow(Row row, PlanPoint by) {
    pointsOf(row) = moved(pointsOf(row), by);
    return row;
}

/// Calls `fn` with each work and stair among the items.
template <class Fn>
void forEachPointed(const DrawnLevel& level, const std::vector<DrawnItem>& items, Fn fn) {
    const auto visit = [&](const auto& rows, DrawnItem::Kind kind) {
        for (const auto& row : rows) {
            if (!row.removed && isAmong(items, kind, rowKey(row)))
                fn(row);
        }
    };
    visit(level.works(), DrawnItem::Kind::work);
    visit(level.stairs(), DrawnItem::Kind::stair);
}

/// Copies of rooms, openings and work, each with a new id, mark and position.
class ItemCopy {
public:
    ItemCopy(const DrawnLevel& level, IdSource& ids, std::string sentence)
        : m_level(level)
        , m_ids(ids)
        , m_edit(level.book(), std::move(sentence)) {}

    void copyRoom(const Room& from, PlanPoint by) {
        Room room = from;
        room.outline = moved(room.outline, by);
        room.mark = newRoomMark(m_level.sheet(), m_rooms++);
        const Id<Room> made = put(std::move(room));
        for (const Opening& opening : m_level.openings()) {
            if (!opening.removed && opening.room.value() == rowKey(from))
                copyOpening(opening, made);
        }
    }

    void copyOpening(const Opening& from, Id<Room> room) {
        Opening opening = from;
        opening.room = room;
        if (room != from.room)
            opening.otherRoom = {};
        int& count = from.isWindow() ? m_windows : m_doors;
        opening.mark = newOpeningMark(m_level.sheet(), from.isWindow(), count++);
        put(std::move(opening));
    }

    template <class Row>
    void copyPointed(const Row& row, PlanPoint by) {
        put(movedRow(row, by));
    }

    Edit take() { return m_edit.take(); }

private:
    template <Overlaid Row>
    Id<Row> put(Row row) {
        row.id = m_ids.next<Row>();
        row.variant = m_level.target().variant;
        row.replaces = {};
        row.position = nextPosition(m_level.sheet().of<Row>()) + m_made++;
        const Id<Row> id = row.id;
        m_edit.put(std::move(row));
        return id;
    }

    const DrawnLevel& m_level;
    IdSource& m_ids;
    EditBuilder m_edit;
    int m_rooms = 0;
    int m_windows = 0;
    int m_doors = 0;
    int m_made = 0;
};

} // namespace

Result<Edit> itemsMoved(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items, PlanPoint by) {
    EditBuilder edit(level.book(), "Move " + howMany(items.size()));
    for (Room room : level.rooms()) {
        if (room.removed || !isAmong(items, DrawnItem::Kind::room, rowKey(room)))
            continue;
        room.outline = moved(room.outline, by);
        if (auto fine = checkOutline(room.outline, room.name.empty() ? room.mark : room.name);
            !fine)
            return fine.error();
        storeRow(edit, ids, level.target(), std::move(room));
    }
    forEachPointed(level, items,
        [&](const auto& row) { storeRow(edit, ids, level.target(), movedRow(row, by)); });
    return edit.take();
}

Result<Edit> itemsCopied(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items, PlanPoint by) {
    ItemCopy copy(level, ids, "Copy " + howMany(items.size()));
    for (const Room& room : level.rooms()) {
        if (!room.removed && isAmong(items, DrawnItem::Kind::room, rowKey(room)))
            copy.copyRoom(room, by);
    }
    for (const Opening& opening : level.openings()) {
        const bool withRoom = isAmong(items, DrawnItem::Kind::room, opening.room.value());
        if (!opening.removed && !withRoom
            && isAmong(items, DrawnItem::Kind::opening, rowKey(opening)))
            copy.copyOpening(opening, opening.room);
    }
    forEachPointed(level, items, [&](const auto& row) { copy.copyPointed(row, by); });
    return copy.take();
}

Result<Edit> itemsRemoved(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items) {
    EditBuilder edit(level.book(), "Remove " + howMany(items.size()) + " from the drawing");
    const auto goes = [&](Id<Room> room) {
        return room && isAmong(items, DrawnItem::Kind::room, room.value());
    };
    for (Opening opening : level.openings()) {
        if (opening.removed)
            continue;
        if (isAmong(items, DrawnItem::Kind::opening, rowKey(opening))) {
            removeRow(edit, ids, level.target(), std::move(opening));
            continue;
        }
        if (!goes(opening.room) && !goes(opening.otherRoom))
            continue;
        if (goes(opening.room)) {
            opening.room = {};
            opening.wall = 0;
            opening.along = {};
        }
        if (goes(opening.otherRoom))
            opening.otherRoom = {};
        storeRow(edit, ids, level.target(), std::move(opening));
    }
    for (const Room& room : level.rooms()) {
        if (!room.removed && isAmong(items, DrawnItem::Kind::room, rowKey(room)))
            removeRow(edit, ids, level.target(), room);
    }
    forEachPointed(
        level, items, [&](const auto& row) { removeRow(edit, ids, level.target(), row); });
    return edit.take();
}

} // namespace miterbook
