// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// The schedules of a plan set that can be brought in.
enum class ScheduleKind { windows, doors, rooms };

template <>
struct Words<ScheduleKind> {
    static constexpr std::array list{
        Word{ScheduleKind::windows, "windows"},
        Word{ScheduleKind::doors, "doors"},
        Word{ScheduleKind::rooms, "rooms"},
    };
};

/// What a column of a schedule says. The words name columns in the shop's remembered corrections.
enum class ScheduleField {
    mark,
    quantity,
    size,
    width,
    height,
    type,
    style,
    rise,
    mulls,
    room,
    otherRoom,
    level,
    wallThickness,
    frameDepth,
    sill,
    sides,
    casing,
    hand,
    hardware,
    deadbolt,
    doorStop,
    name,
    use,
    length,
    outline,
    perimeter,
    ceiling,
    base,
    shoe,
    crown,
    chairRail,
    baseBreak,
    closet,
    closetWidth,
    closetDepth,
    shelves,
    note,
};

template <>
struct Words<ScheduleField> {
    using enum ScheduleField;
    static constexpr std::array list{
        Word{mark, "mark"},
        Word{quantity, "quantity"},
        Word{size, "size"},
        Word{width, "width"},
        Word{height, "height"},
        Word{type, "type"},
        Word{style, "trim style"},
        Word{rise, "arch rise"},
        Word{mulls, "units side by side"},
        Word{room, "room"},
        Word{otherRoom, "other room"},
        Word{level, "level"},
        Word{wallThickness, "wall thickness"},
        Word{frameDepth, "jamb depth"},
        Word{sill, "sill height"},
        Word{sides, "sides cased"},
        Word{casing, "casing"},
        Word{hand, "hand"},
        Word{hardware, "hardware"},
        Word{deadbolt, "deadbolt"},
        Word{doorStop, "door stop"},
        Word{name, "name"},
        Word{use, "use"},
        Word{length, "length"},
        Word{outline, "walls"},
        Word{perimeter, "perimeter"},
        Word{ceiling, "ceiling"},
        Word{base, "base"},
        Word{shoe, "shoe"},
        Word{crown, "crown"},
        Word{chairRail, "chair rail"},
        Word{baseBreak, "wall without base"},
        Word{closet, "closet"},
        Word{closetWidth, "closet width"},
        Word{closetDepth, "shelf depth"},
        Word{shelves, "shelves"},
        Word{note, "note"},
    };
};

/// One column that a kind of schedule may have, and the headers it is met under: lower case,
/// parted by '|', without points, hyphens and units.
struct ScheduleColumn {
    ScheduleField field;
    std::string_view headers;
};

/// All columns that a kind of schedule may have.
std::span<const ScheduleColumn> columnsOf(ScheduleKind kind);

/// What a schedule lacks when it has only these columns, in words: "mark", "size (or width and
/// height)". Empty when it can be read.
std::vector<std::string> missingColumns(
    ScheduleKind kind, const std::vector<ScheduleField>& present);

} // namespace miterbook
