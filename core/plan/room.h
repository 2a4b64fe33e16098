// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "plan/plan.h"
#include "plan/point.h"

#include <vector>

namespace miterbook {

enum class RoomUse { room, hall, kitchen, bath, laundry, closet, pantry, stair, garage, other };

template <>
struct Words<RoomUse> {
    static constexpr std::array list{
        Word{RoomUse::room, "room"},
        Word{RoomUse::hall, "hall"},
        Word{RoomUse::kitchen, "kitchen"},
        Word{RoomUse::bath, "bath"},
        Word{RoomUse::laundry, "laundry"},
        Word{RoomUse::closet, "closet"},
        Word{RoomUse::pantry, "pantry"},
        Word{RoomUse::stair, "stair"},
        Word{RoomUse::garage, "garage"},
        Word{RoomUse::other, "other"},
    };
};

/// How a wall meets the next one, seen from inside the room; open when no wall follows.
enum class Corner { inside, outside, open };

template <>
struct Words<Corner> {
    static constexpr std::array list{Word{Corner::inside, "inside"},
        Word{Corner::outside, "outside"}, Word{Corner::open, "open"}};
};

/// One wall of a room's outline, in order round the room, the room on the right hand side.
struct Wall {
    Length length;
    Corner corner = Corner::inside;   ///< at this wall's far end
    Angle angle = Angle::degrees(90); ///< between the two walls at that corner, under 180
    bool base = true;
    bool crown = true;
    bool shoe = true; ///< where it has base

    bool operator==(const Wall&) const = default;
};

template <>
struct Describe<Wall> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "wall";
    static constexpr void allFields(auto&& take) {
        take(field("length", &Wall::length), field("corner", &Wall::corner),
            field("angle", &Wall::angle), field("base", &Wall::base), field("crown", &Wall::crown),
            field("shoe", &Wall::shoe));
    }
};

/// What stands against a wall instead of base.
enum class BreakKind { cabinets, tub, shower, fireplace, other };

template <>
struct Words<BreakKind> {
    static constexpr std::array list{
        Word{BreakKind::cabinets, "cabinets"},
        Word{BreakKind::tub, "tub"},
        Word{BreakKind::shower, "shower"},
        Word{BreakKind::fireplace, "fireplace"},
        Word{BreakKind::other, "other"},
    };
};

/// A stretch of one wall without base and shoe.
struct BaseBreak {
    int wall = 1; ///< from 1
    Length from;  ///< from the wall's first corner
    Length length;
    BreakKind kind = BreakKind::cabinets;

    bool operator==(const BaseBreak&) const = default;
};

template <>
struct Describe<BaseBreak> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "base break";
    static constexpr void allFields(auto&& take) {
        take(field("wall", &BaseBreak::wall), field("from", &BaseBreak::from),
            field("length", &BaseBreak::length), field("kind", &BaseBreak::kind));
    }
};

/// Which runs a room gets: as the plan says, its own profile, or none.
enum class RunChoice { plan, own, none };

template <>
struct Words<RunChoice> {
    static constexpr std::array list{Word{RunChoice::plan, "as plan"}, Word{RunChoice::own, "own"},
        Word{RunChoice::none, "none"}};
};

struct Room {
    Id<Room> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Room> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    std::string mark; ///< number on the plan: "101"
    std::string name; ///< "Great room"
    RoomUse use = RoomUse::room;
    std::vector<Wall> walls;
    Length ceiling; ///< zero: the level's
    RunChoice baseChoice = RunChoice::plan;
    Id<Profile> base; ///< where baseChoice is own
    RunChoice shoeChoice = RunChoice::plan;
    Id<Profile> shoe;
    RunChoice crownChoice = RunChoice::none;
    Id<Profile> crown;
    Id<Profile> chairRail;    ///< none: no chair rail
    Length baseBreak;         ///< cabinets and the like whose place is not said: wall without base
    Length extraBase;         ///< island backs and the like: base without wall
    bool builtUpBase = false; ///< base of several pieces
    std::string note;
    Outline outline;               ///< where it is drawn; `walls` are then the outline's
    std::vector<BaseBreak> breaks; ///< cabinets, tubs, fireplaces in their places

    bool operator==(const Room&) const = default;
};

template <>
struct Describe<Room> {
    static constexpr std::string_view table = "room";
    static constexpr std::string_view noun = "room";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Room::id), field("plan", &Room::plan), field("variant", &Room::variant),
            field("replaces", &Room::replaces), field("removed", &Room::removed),
            field("position", &Room::position), field("level", &Room::level),
            field("mark", &Room::mark), field("name", &Room::name), field("use", &Room::use),
            field("walls", &Room::walls), field("ceiling", &Room::ceiling),
            field("base_choice", &Room::baseChoice), field("base", &Room::base),
            field("shoe_choice", &Room::shoeChoice), field("shoe", &Room::shoe),
            field("crown_choice", &Room::crownChoice), field("crown", &Room::crown),
            field("chair_rail", &Room::chairRail), field("base_break", &Room::baseBreak),
            field("extra_base", &Room::extraBase), field("built_up_base", &Room::builtUpBase),
            field("note", &Room::note), field("outline", &Room::outline),
            field("breaks", &Room::breaks));
    }
};

} // namespace miterbook
