// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/decoded_text.h"
#include "io/room_words.h"
#include "io/schedule_rows.h"
#include "plan/room_text.h"

#include <algorithm>

namespace miterbook {

namespace {

using enum ScheduleField;

constexpr Length shortestSide = Length::inches(18);

std::vector<Wall> fourWalls(Length across, Length deep) {
    std::vector<Wall> walls(4);
    walls[0].length = walls[2].length = across;
    walls[1].length = walls[3].length = deep;
    return walls;
}

/// Four walls round a room of which only the perimeter is known; the last takes what is left over.
std::vector<Wall> equalWalls(Length round) {
    std::vector<Wall> walls = fourWalls(round / 4, round / 4);
    walls[3].length = round - walls[0].length * 3;
    return walls;
}

std::vector<Wall> readOutline(RowReader& reader, ScheduleField field) {
    auto walls = parseWalls(reader.text(field), LengthUnit::inches);
    if (walls)
        return *walls;
    reader.reject(field, walls.error().sentence);
    return {};
}

std::vector<Wall> readSides(RowReader& reader) {
    const auto across = reader.length(width);
    const auto deep = reader.length(length);
    if (reader.silent(width))
        reader.reject(width, "A width is needed.");
    if (reader.silent(length))
        reader.reject(length, "A length is needed.");
    return across && deep ? fourWalls(*across, *deep) : std::vector<Wall>();
}

/// The walls from whatever the row tells: the outline, else a size, else two sides, else round.
std::vector<Wall> readWalls(RowReader& reader, ScheduleField& from) {
    if (!reader.silent(from = outline))
        return readOutline(reader, outline);
    if (!reader.silent(from = size)) {
        const auto both = reader.size(size);
        return both ? fourWalls(both->width, both->height) : std::vector<Wall>();
    }
    if (!reader.silent(from = width) || !reader.silent(from = length))
        return readSides(reader);
    from = perimeter;
    if (const auto round = reader.length(perimeter)) {
        reader.remark("only its perimeter is known; taken as four equal walls.");
        return equalWalls(*round);
    }
    if (!reader.rejected()) {
        const std::array told{outline, size, width, perimeter};
        const auto there = std::ranges::find_if(told, [&](auto f) { return reader.has(f); });
        reader.reject(there == told.end() ? size : *there, "The room's size is needed.");
    }
    return {};
}

void checkWalls(RowReader& reader, const Room& room, ScheduleField from) {
    const bool tiny = std::ranges::any_of(
        room.walls, [](const Wall& wall) { return wall.length < shortestSide; });
    // An outline may well have a short return; a rectangle that small is feet without their mark.
    if (tiny && from != outline && !reader.rejected())
        reader.reject(from,
            "A wall under 18 in would be no room; bare numbers are inches, write "
            "feet as 12'.");
}

/// "none" is none, yes or silence is as the plan has it, a profile's name is the room's own.
void readRun(RowReader& reader, ScheduleField field, ProfileUse use, RunChoice& choice,
    Id<Profile>& profile) {
    const std::string_view text = reader.text(field);
    if (text.empty())
        return;
    if (reader.silent(field) || saysNoTrim(text)) {
        choice = RunChoice::none;
    } else if (saysYes(text) || saysAsPlan(text)) {
        choice = RunChoice::plan;
    } else {
        choice = RunChoice::own;
        profile = reader.profile(field, use);
    }
}

void readRuns(RowReader& reader, Room& room) {
    readRun(reader, base, ProfileUse::base, room.baseChoice, room.base);
    readRun(reader, shoe, ProfileUse::shoe, room.shoeChoice, room.shoe);
    readRun(reader, crown, ProfileUse::crown, room.crownChoice, room.crown);
    if (!saysNoTrim(reader.text(chairRail)))
        room.chairRail = reader.profile(chairRail, ProfileUse::chairRail);
}

RoomUse readUse(RowReader& reader, const Room& room) {
    if (reader.silent(use))
        return useFromName(room.name);
    const std::string text = foldedText(reader.text(use));
    if (const auto said = fromWord<RoomUse>(text))
        return *said;
    return useFromName(text);
}

Length longestWall(const Room& room) {
    Length longest;
    for (const Wall& wall : room.walls)
        longest = std::max(longest, wall.length);
    return longest;
}

Closet closetOf(RowReader& reader, const Room& room, const ClosetWords& said) {
    Closet made;
    made.name = room.name;
    made.level = room.level;
    made.kind = said.kind;
    const bool storage = room.use == RoomUse::closet || room.use == RoomUse::pantry;
    if (const auto across = reader.length(closetWidth))
        made.width = *across;
    else if (storage)
        made.width = longestWall(room);
    else if (reader.silent(closetWidth))
        reader.reject(closetWidth, "How wide is the closet?");
    if (const auto deep = reader.length(closetDepth))
        made.depth = *deep;
    made.shelves = reader.whole(shelves, 1, 20, said.shelves);
    if (made.kind == ClosetKind::shelves && made.shelves == 0)
        reader.reject(closet, "How many shelves? Write it as 5 shelves.");
    made.shelf = reader.names().onlyProfile(ProfileUse::shelf);
    made.cleat = reader.names().onlyProfile(ProfileUse::cleat);
    if (made.kind != ClosetKind::shelves)
        made.rod = reader.names().onlyProfile(ProfileUse::rod);
    return made;
}

std::optional<Closet> readCloset(RowReader& reader, const Room& room) {
    if (reader.silent(closet))
        return std::nullopt;
    const auto said = closetWords(reader.text(closet));
    if (!said) {
        reader.reject(closet,
            quotedCell(reader.text(closet))
                + " is no shelving; say shelf and rod, double rod or 5 shelves.");
        return std::nullopt;
    }
    return closetOf(reader, room, *said);
}

} // namespace

ScheduleRow roomRow(RowReader& reader) {
    Room room;
    room.mark = singleLine(reader.text(mark));
    room.name = singleLine(reader.text(name));
    if (room.mark.empty() && room.name.empty())
        reader.reject(reader.has(name) ? name : mark, "A number or a name is needed.");
    if (room.name.empty())
        room.name = room.mark;
    if (const Level* level = reader.level())
        room.level = level->id;
    room.use = readUse(reader, room);
    ScheduleField from = size;
    room.walls = readWalls(reader, from);
    checkWalls(reader, room, from);
    if (const auto high = reader.length(ceiling))
        room.ceiling = *high;
    readRuns(reader, room);
    if (const auto bare = reader.length(baseBreak))
        room.baseBreak = *bare;
    room.note = singleLine(reader.text(note));
    auto fitted = readCloset(reader, room);
    return {reader.line(), {}, std::move(room), std::move(fitted)};
}

} // namespace miterbook
