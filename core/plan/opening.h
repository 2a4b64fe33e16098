// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "plan/plan.h"
#include "plan/room.h"

#include <vector>

namespace miterbook {

enum class OpeningKind {
    window,
    prehungDoor,
    doubleDoor,
    bifoldDoor,
    bypassDoor,
    pocketDoor,
    exteriorDoor,
    casedOpening,
};

template <>
struct Words<OpeningKind> {
    static constexpr std::array list{
        Word{OpeningKind::window, "window"},
        Word{OpeningKind::prehungDoor, "prehung door"},
        Word{OpeningKind::doubleDoor, "double door"},
        Word{OpeningKind::bifoldDoor, "bifold door"},
        Word{OpeningKind::bypassDoor, "bypass door"},
        Word{OpeningKind::pocketDoor, "pocket door"},
        Word{OpeningKind::exteriorDoor, "exterior door"},
        Word{OpeningKind::casedOpening, "cased opening"},
    };
};

enum class Shape { rectangle, polygon, arch };

template <>
struct Words<Shape> {
    static constexpr std::array list{
        Word{Shape::rectangle, "rectangle"},
        Word{Shape::polygon, "polygon"},
        Word{Shape::arch, "arch"},
    };
};

/// How an opening is trimmed. A door or cased opening is three-sided or butted head.
enum class TrimStyle { pictureFrame, stoolAndApron, threeSided, buttedHead, drywallReturn };

template <>
struct Words<TrimStyle> {
    static constexpr std::array list{
        Word{TrimStyle::pictureFrame, "picture frame"},
        Word{TrimStyle::stoolAndApron, "stool and apron"},
        Word{TrimStyle::threeSided, "three-sided"},
        Word{TrimStyle::buttedHead, "butted head"},
        Word{TrimStyle::drywallReturn, "drywall return"},
    };
};

enum class Hand { none, left, right };

template <>
struct Words<Hand> {
    static constexpr std::array list{
        Word{Hand::none, "none"}, Word{Hand::left, "left"}, Word{Hand::right, "right"}};
};

enum class Lockset { none, passage, privacy, dummy, keyed };

template <>
struct Words<Lockset> {
    static constexpr std::array list{
        Word{Lockset::none, "none"},
        Word{Lockset::passage, "passage"},
        Word{Lockset::privacy, "privacy"},
        Word{Lockset::dummy, "dummy"},
        Word{Lockset::keyed, "keyed"},
    };
};

/// One side of a polygon opening, in order round it clockwise from the lower left corner.
struct PolygonSide {
    Length length;                    ///< jamb inside, corner to corner
    Angle angle = Angle::degrees(90); ///< inside angle at this side's far end

    bool operator==(const PolygonSide&) const = default;
};

template <>
struct Describe<PolygonSide> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "side";
    static constexpr void allFields(auto&& take) {
        take(field("length", &PolygonSide::length), field("angle", &PolygonSide::angle));
    }
};

/// A window, door or cased opening. Width and height are jamb inside; heights of doors and cased
/// openings are from the finished floor.
struct Opening {
    Id<Opening> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Opening> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    Id<Room> room;
    Id<Room> otherRoom; ///< the room on the other side of a door or cased opening
    int wall = 0;       ///< which wall of `room` it stands in, from 1; 0 not said
    std::string mark;   ///< "W4", "D12"
    int count = 1;      ///< how many alike
    OpeningKind kind = OpeningKind::window;
    Length width;
    Length height;
    Shape shape = Shape::rectangle;
    Length rise;                    ///< arch: of the segmental head above `height`
    std::vector<PolygonSide> sides; ///< polygon: all sides
    TrimStyle style = TrimStyle::pictureFrame;
    int sidesCased = 1;     ///< 0, 1 or 2 faces of the wall
    Id<Profile> casing;     ///< none: the plan's
    Id<Profile> stool;      ///< none: the plan's
    Id<Profile> cap;        ///< butted head: cap or fillet on the head board; none: no cap
    Length reveal;          ///< zero: the shop's
    int mulls = 0;          ///< joints between units set side by side in one frame
    Id<Profile> mullCasing; ///< none: the opening's casing
    Length wallThickness;   ///< finish to finish; zero: not said
    Length frameDepth;      ///< jamb as delivered; zero: not said
    Hand hand = Hand::none;
    Lockset lockset = Lockset::none;
    bool deadbolt = false;
    bool doorStop = false;
    bool fromSubfloor = false; ///< legs run down to the subfloor (flooring comes later)
    Length flooring;           ///< thickness of that later flooring
    std::string note;
    Length along; ///< from the first corner of `wall` to its middle; zero: not said

    bool isDoor() const { return kind != OpeningKind::window && kind != OpeningKind::casedOpening; }
    bool isWindow() const { return kind == OpeningKind::window; }
    bool operator==(const Opening&) const = default;
};

template <>
struct Describe<Opening> {
    static constexpr std::string_view table = "opening";
    static constexpr std::string_view noun = "opening";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Opening::id), field("plan", &Opening::plan),
            field("variant", &Opening::variant), field("replaces", &Opening::replaces),
            field("removed", &Opening::removed), field("position", &Opening::position),
            field("level", &Opening::level), field("room", &Opening::room),
            field("other_room", &Opening::otherRoom), field("wall", &Opening::wall),
            field("mark", &Opening::mark), field("count", &Opening::count),
            field("kind", &Opening::kind), field("width", &Opening::width),
            field("height", &Opening::height), field("shape", &Opening::shape),
            field("rise", &Opening::rise), field("sides", &Opening::sides),
            field("style", &Opening::style), field("sides_cased", &Opening::sidesCased),
            field("casing", &Opening::casing), field("stool", &Opening::stool),
            field("cap", &Opening::cap), field("reveal", &Opening::reveal),
            field("mulls", &Opening::mulls), field("mull_casing", &Opening::mullCasing),
            field("wall_thickness", &Opening::wallThickness),
            field("frame_depth", &Opening::frameDepth), field("hand", &Opening::hand),
            field("lockset", &Opening::lockset), field("deadbolt", &Opening::deadbolt),
            field("door_stop", &Opening::doorStop), field("from_subfloor", &Opening::fromSubfloor),
            field("flooring", &Opening::flooring), field("note", &Opening::note),
            field("along", &Opening::along));
    }
};

} // namespace miterbook
