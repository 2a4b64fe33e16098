// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/schedule.h"

#include <algorithm>

namespace miterbook {

namespace {

using enum ScheduleField;

// Rough opening sizes are not here on purpose: they are other numbers than the opening's.
constexpr std::array windowColumns{
    ScheduleColumn{mark,
        "mark|window|window mark|window no|window number|no|#|id|tag|symbol|key|unit"
        "|window id|window tag"},
    ScheduleColumn{quantity, "qty|quantity|count|no req'd|number required|ea|total"},
    ScheduleColumn{size,
        "size|unit size|call size|callout|call out|nominal size|w x h|wxh"
        "|width x height|size (w x h)|size (wxh)|size w x h|size wxh"},
    ScheduleColumn{width, "width|w|wd|unit width|frame width|nominal width"},
    ScheduleColumn{height, "height|h|ht|hgt|unit height|frame height|nominal height"},
    ScheduleColumn{type, "type|window type|operation|description|style|unit type|shape|kind"},
    ScheduleColumn{style, "trim|trim style|casing style|interior trim|trim type|cased as"},
    ScheduleColumn{rise, "rise|arch rise|head rise"},
    ScheduleColumn{mulls, "units|units wide|units side by side|mull|mulled|mulled units|ganged"},
    ScheduleColumn{room, "room|location|room no|room number|room name|where|space"},
    ScheduleColumn{level, "level|floor|storey|story"},
    ScheduleColumn{wallThickness, "wall|wall thickness|wall type|wall depth|wall size"},
    ScheduleColumn{frameDepth, "jamb|jamb depth|jamb width|jamb size|frame depth"},
    ScheduleColumn{sill, "sill|sill height|sill ht|sill aff"},
    ScheduleColumn{sides, "sides|sides cased|cased sides"},
    ScheduleColumn{casing, "casing|casing profile"},
    ScheduleColumn{note, "note|notes|remark|remarks|comment|comments"},
};

constexpr std::array doorColumns{
    ScheduleColumn{mark,
        "mark|door|door mark|door no|door number|no|#|id|tag|symbol|key|door id"
        "|door tag"},
    ScheduleColumn{quantity, "qty|quantity|count|no req'd|number required|ea|total"},
    ScheduleColumn{size,
        "size|door size|call size|callout|call out|nominal size|slab|slab size"
        "|w x h|wxh|width x height|size (w x h)|size (wxh)|size w x h|size wxh"},
    ScheduleColumn{width, "width|w|wd|door width|nominal width"},
    ScheduleColumn{height, "height|h|ht|hgt|door height|nominal height"},
    ScheduleColumn{type, "type|door type|operation|description|style|kind|function"},
    ScheduleColumn{style, "trim|trim style|casing style|interior trim|trim type|cased as"},
    ScheduleColumn{room, "room|from|from room|location|room no|room number|room name|where|space"},
    ScheduleColumn{otherRoom, "to|to room|other room|into"},
    ScheduleColumn{level, "level|floor|storey|story"},
    ScheduleColumn{wallThickness, "wall|wall thickness|wall type|wall depth|wall size"},
    ScheduleColumn{frameDepth, "jamb|jamb depth|jamb width|jamb size|frame depth"},
    ScheduleColumn{sides, "sides|sides cased|cased sides"},
    ScheduleColumn{casing, "casing|casing profile"},
    ScheduleColumn{hand, "hand|handing|swing|hinge|hinge side"},
    ScheduleColumn{hardware, "hardware|lockset|lock|latch|hdwe|hdw|hardware set|lock function"},
    ScheduleColumn{deadbolt, "deadbolt|dead bolt|db"},
    ScheduleColumn{doorStop, "stop|door stop|doorstop"},
    ScheduleColumn{note, "note|notes|remark|remarks|comment|comments"},
};

constexpr std::array roomColumns{
    ScheduleColumn{mark, "number|no|#|room no|room number|mark|id|rm|rm no|room id|tag"},
    ScheduleColumn{name, "name|room|room name|space|description|space name"},
    ScheduleColumn{use, "use|usage|room type|type|room use|occupancy"},
    ScheduleColumn{level, "level|floor level|storey|story"},
    ScheduleColumn{length, "length|l|depth|room length"},
    ScheduleColumn{width, "width|w|room width"},
    ScheduleColumn{size, "size|dimensions|dims|room size|l x w|lxw|w x l|wxl"},
    ScheduleColumn{outline, "walls|outline|wall lengths"},
    ScheduleColumn{perimeter, "perimeter|perim|wall length|total wall length"},
    ScheduleColumn{ceiling,
        "ceiling|ceiling height|ceiling ht|clg|clg ht|clg height|ceiling hgt"
        "|height|plate"},
    ScheduleColumn{base, "base|baseboard|base profile|base type"},
    ScheduleColumn{shoe, "shoe|shoe mould|shoe mold|quarter round|shoe profile"},
    ScheduleColumn{crown,
        "crown|crown mould|crown mold|crown profile|cornice|crown molding"
        "|crown moulding"},
    ScheduleColumn{chairRail, "chair rail|rail|chair rail profile"},
    ScheduleColumn{baseBreak,
        "no base|wall without base|cabinets|cabinet run|base deduct"
        "|cabinets and tubs"},
    ScheduleColumn{closet, "closet|shelving|closet shelving|closet type"},
    ScheduleColumn{closetWidth, "closet width|shelf length|shelf width|shelving width"},
    ScheduleColumn{closetDepth, "closet depth|shelf depth|shelving depth"},
    ScheduleColumn{shelves, "shelves|shelf count|no of shelves|shelf qty"},
    ScheduleColumn{note, "note|notes|remark|remarks|comment|comments"},
};

} // namespace

std::span<const ScheduleColumn> columnsOf(ScheduleKind kind) {
    switch (kind) {
    case ScheduleKind::windows:
        return windowColumns;
    case ScheduleKind::doors:
        return doorColumns;
    case ScheduleKind::rooms:
        break;
    }
    return roomColumns;
}

std::vector<std::string> missingColumns(
    ScheduleKind kind, const std::vector<ScheduleField>& present) {
    const auto has = [&](ScheduleField field) { return std::ranges::count(present, field) > 0; };
    std::vector<std::string> missing;
    if (kind == ScheduleKind::rooms) {
        if (!has(mark) && !has(name))
            missing.push_back("number or name");
        if (!has(size) && !has(outline) && !has(perimeter) && !(has(length) && has(width)))
            missing.push_back("size (or length and width, walls, perimeter)");
        return missing;
    }
    if (!has(mark))
        missing.push_back("mark");
    if (!has(size) && !(has(width) && has(height)))
        missing.push_back("size (or width and height)");
    return missing;
}

} // namespace miterbook
