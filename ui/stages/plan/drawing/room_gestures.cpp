// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/room_gestures.h"

#include "basics/blank.h"
#include "io/room_words.h"
#include "plan/redraw.h"
#include "plan/room_text.h"
#include "stages/plan/drawing/typed_examples.h"
#include "stages/plan/opening_specs.h"

namespace miterbook {

namespace {

Error noRoom() {
    return {Fault::notFound, "Choose a room first."};
}

std::string nameOfRoom(const Room& room) {
    return !room.name.empty() ? room.name : !room.mark.empty() ? room.mark : std::string("room");
}

/// Puts a room and what hangs on it.
class RoomEdit {
public:
    RoomEdit(const DrawnLevel& level, IdSource& ids, std::string sentence)
        : m_level(level)
        , m_ids(ids)
        , m_edit(level.book(), std::move(sentence)) {}

    template <Overlaid Row>
    void store(Row row) {
        storeRow(m_edit, m_ids, m_level.target(), std::move(row));
    }

    void reshape(const Room& before, const Room& after) {
        for (const Opening& opening : m_level.openings()) {
            if (opening.removed || opening.room.value() != rowKey(before))
                continue;
            Opening now = rehung(opening, before, after);
            if (now != opening)
                store(std::move(now));
        }
        store(after);
    }

    EditBuilder& builder() { return m_edit; }
    Edit take() { return m_edit.take(); }

private:
    const DrawnLevel& m_level;
    IdSource& m_ids;
    EditBuilder m_edit;
};

void keepBreaksWithin(Room& room) {
    std::erase_if(room.breaks, [&](BaseBreak& each) {
        const auto wall = static_cast<std::size_t>(each.wall);
        if (each.wall < 1 || wall > room.walls.size())
            return true;
        const Length length = room.walls[wall - 1].length;
        each.from = std::min(each.from, length);
        each.length = std::min(each.length, length - each.from);
        return each.length <= Length();
    });
}

bool& runOf(Wall& wall, WallRunKind run) {
    return run == WallRunKind::base ? wall.base
        : run == WallRunKind::crown ? wall.crown
                                    : wall.shoe;
}

std::string_view wordOf(WallRunKind run) {
    return run == WallRunKind::base ? "base" : run == WallRunKind::crown ? "crown" : "shoe";
}

} // namespace

Result<Edit> roomAdded(const DrawnLevel& level, IdSource& ids, const Outline& outline) {
    if (!level.level())
        return badInput("The plan needs a level before rooms can be drawn.");
    Room room;
    room.plan = level.target().plan;
    room.level = level.level();
    room.position = nextPosition(level.sheet().of<Room>());
    room.mark = newRoomMark(level.sheet(), 0);
    if (auto drawn = setOutline(room, outline); !drawn)
        return drawn.error();
    RoomEdit edit(level, ids, "Draw room " + room.mark);
    edit.store(std::move(room));
    return edit.take();
}

Result<Edit> roomReshaped(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, const Outline& outline) {
    const Room* before = level.room(key);
    if (!before)
        return noRoom();
    Room after = *before;
    if (auto drawn = setOutline(after, outline); !drawn)
        return drawn.error();
    keepBreaksWithin(after);
    RoomEdit edit(level, ids, "Redraw " + nameOfRoom(after));
    edit.reshape(*before, after);
    return edit.take();
}

Result<Edit> roomSaid(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, const std::string& typed) {
    const Room* before = level.room(key);
    const std::string name(trimmed(typed));
    if (!before)
        return noRoom();
    if (name.empty())
        return badInput(std::string("Type a name, or walls such as ")
                            .append(wallsExample(level.book().prices.shop().unit))
                            .append("."));
    Room after = *before;
    // A name may hold an x; walls begin with a digit and end in none but marks.
    const bool maybeWalls = name.front() >= '0' && name.front() <= '9';
    auto walls = maybeWalls ? parseWalls(name, level.book().prices.shop().unit)
                            : Result<std::vector<Wall>>(badInput(""));
    if (!walls || walls->size() < 3) {
        after.name = name;
        after.use = useFromName(name);
        RoomEdit edit(level, ids, "Name room " + name);
        edit.store(std::move(after));
        return edit.take();
    }
    if (auto drawn = setWalls(after, std::move(walls).value()); !drawn)
        return drawn.error();
    keepBreaksWithin(after);
    RoomEdit edit(level, ids, "Resize " + nameOfRoom(after));
    edit.reshape(*before, after);
    return edit.take();
}

Result<Edit> wallSwitched(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, std::size_t wall, WallRunKind run) {
    const Room* before = level.room(key);
    if (!before || wall >= before->walls.size())
        return badInput("Choose a wall of a room first.");
    Room after = *before;
    bool& on = runOf(after.walls[wall], run);
    on = !on;
    RoomEdit edit(level, ids,
        std::string(on ? "Put " : "Leave ") + std::string(wordOf(run))
            + (on ? " on wall " : " off wall ") + std::to_string(wall + 1) + " of "
            + nameOfRoom(after));
    edit.store(std::move(after));
    return edit.take();
}

Result<Edit> breakAdded(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, const BaseBreak& what) {
    const Room* before = level.room(key);
    if (!before)
        return noRoom();
    Room after = *before;
    std::erase_if(after.breaks, [&](const BaseBreak& each) {
        return each.wall == what.wall && each.kind == what.kind
            && each.from < what.from + what.length && what.from < each.from + each.length;
    });
    after.breaks.push_back(what);
    RoomEdit edit(level, ids, "Put " + std::string(word(what.kind)) + " into " + nameOfRoom(after));
    edit.store(std::move(after));
    return edit.take();
}

Result<Edit> breaksCleared(const DrawnLevel& level, IdSource& ids, std::int64_t key) {
    const Room* before = level.room(key);
    if (!before)
        return noRoom();
    Room after = *before;
    after.breaks.clear();
    RoomEdit edit(level, ids, "Clear the walls of " + nameOfRoom(after));
    edit.store(std::move(after));
    return edit.take();
}

} // namespace miterbook
