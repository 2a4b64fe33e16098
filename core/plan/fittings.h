// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/quantity.h"
#include "book/task.h"
#include "plan/plan.h"
#include "plan/room.h"

namespace miterbook {

enum class ClosetKind { shelfAndRod, doubleRod, shelves };

template <>
struct Words<ClosetKind> {
    static constexpr std::array list{
        Word{ClosetKind::shelfAndRod, "shelf and rod"},
        Word{ClosetKind::doubleRod, "double rod"},
        Word{ClosetKind::shelves, "shelves"},
    };
};

/// The shelving of one closet, pantry or linen cupboard.
struct Closet {
    Id<Closet> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Closet> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    Id<Room> room;
    std::string name;
    ClosetKind kind = ClosetKind::shelfAndRod;
    Length width; ///< of each shelf
    Length depth = Length::inches(12);
    int shelves = 1; ///< for kind shelves; one each for a rod otherwise
    int count = 1;
    Id<Profile> shelf; ///< sheet or board stock by length; none: not counted in sticks
    Id<Profile> rod;
    Id<Profile> cleat; ///< along the back and both ends
    std::string note;

    bool operator==(const Closet&) const = default;
};

template <>
struct Describe<Closet> {
    static constexpr std::string_view table = "closet";
    static constexpr std::string_view noun = "closet";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Closet::id), field("plan", &Closet::plan),
            field("variant", &Closet::variant), field("replaces", &Closet::replaces),
            field("removed", &Closet::removed), field("position", &Closet::position),
            field("level", &Closet::level), field("room", &Closet::room),
            field("name", &Closet::name), field("kind", &Closet::kind),
            field("width", &Closet::width), field("depth", &Closet::depth),
            field("shelves", &Closet::shelves), field("count", &Closet::count),
            field("shelf", &Closet::shelf), field("rod", &Closet::rod),
            field("cleat", &Closet::cleat), field("note", &Closet::note));
    }
};

enum class RailStyle { none, postToPost, overPost };

template <>
struct Words<RailStyle> {
    static constexpr std::array list{
        Word{RailStyle::none, "none"},
        Word{RailStyle::postToPost, "post to post"},
        Word{RailStyle::overPost, "over the post"},
    };
};

/// One stair. Skirts, treads and risers, and the rail with its newels and balusters.
struct Stair {
    Id<Stair> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Stair> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    Id<Room> room;
    std::string name;
    int risers = 14;
    int closedSkirts = 2;         ///< skirts against a wall
    int openSkirts = 0;           ///< open, mitered skirts
    bool treadsAndRisers = false; ///< finish treads and risers are set by the shop
    Length skirtLength;           ///< of one skirt board
    Id<Profile> skirt;
    RailStyle rail = RailStyle::none;
    Length railLength;
    Id<Profile> handrail;
    int newels = 0;
    int balusters = 0;  ///< counted; 0 with a clear run: computed from the largest gap
    Length balusterRun; ///< clear run between newels
    Length balusterWidth = Length::sixteenths(20);
    std::string note;
    /// On the plan of its level: from the foot of the stair, by the middle of each landing, to its
    /// head. Empty where it is not drawn.
    std::vector<PlanPoint> walkLine;
    Length flightWidth = Length::inches(36); ///< as drawn

    bool operator==(const Stair&) const = default;
};

template <>
struct Describe<Stair> {
    static constexpr std::string_view table = "stair";
    static constexpr std::string_view noun = "stair";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Stair::id), field("plan", &Stair::plan),
            field("variant", &Stair::variant), field("replaces", &Stair::replaces),
            field("removed", &Stair::removed), field("position", &Stair::position),
            field("level", &Stair::level), field("room", &Stair::room), field("name", &Stair::name),
            field("risers", &Stair::risers), field("closed_skirts", &Stair::closedSkirts),
            field("open_skirts", &Stair::openSkirts),
            field("treads_and_risers", &Stair::treadsAndRisers),
            field("skirt_length", &Stair::skirtLength), field("skirt", &Stair::skirt),
            field("rail", &Stair::rail), field("rail_length", &Stair::railLength),
            field("handrail", &Stair::handrail), field("newels", &Stair::newels),
            field("balusters", &Stair::balusters), field("baluster_run", &Stair::balusterRun),
            field("baluster_width", &Stair::balusterWidth), field("note", &Stair::note),
            field("walk_line", &Stair::walkLine), field("flight_width", &Stair::flightWidth));
    }
};

enum class TreatmentKind { shiplap, boardAndBatten, wainscot };

template <>
struct Words<TreatmentKind> {
    static constexpr std::array list{
        Word{TreatmentKind::shiplap, "shiplap"},
        Word{TreatmentKind::boardAndBatten, "board and batten"},
        Word{TreatmentKind::wainscot, "wainscot"},
    };
};

/// A wall covered with boards.
struct WallTreatment {
    Id<WallTreatment> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<WallTreatment> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    Id<Room> room;
    std::string name;
    TreatmentKind kind = TreatmentKind::shiplap;
    Length width;
    Length height;
    Id<Profile> board; ///< none: material is not counted
    Length spacing;    ///< board faces (shiplap) or batten centres; positive
    Id<Profile> cap;   ///< along the top; none: no cap
    std::string note;

    bool operator==(const WallTreatment&) const = default;
};

template <>
struct Describe<WallTreatment> {
    static constexpr std::string_view table = "wall_treatment";
    static constexpr std::string_view noun = "wall treatment";
    static constexpr void allFields(auto&& take) {
        take(field("id", &WallTreatment::id), field("plan", &WallTreatment::plan),
            field("variant", &WallTreatment::variant), field("replaces", &WallTreatment::replaces),
            field("removed", &WallTreatment::removed), field("position", &WallTreatment::position),
            field("level", &WallTreatment::level), field("room", &WallTreatment::room),
            field("name", &WallTreatment::name), field("kind", &WallTreatment::kind),
            field("width", &WallTreatment::width), field("height", &WallTreatment::height),
            field("board", &WallTreatment::board), field("spacing", &WallTreatment::spacing),
            field("cap", &WallTreatment::cap), field("note", &WallTreatment::note));
    }
};

/// What the marks of other work on the plan measure: how many there are, the line through them, or
/// what they enclose.
enum class MarkKind { none, count, run, area };

template <>
struct Words<MarkKind> {
    static constexpr std::array list{Word{MarkKind::none, "none"}, Word{MarkKind::count, "count"},
        Word{MarkKind::run, "run"}, Word{MarkKind::area, "area"}};
};

/// Anything else that is counted: mantels, attic accesses, half-wall caps, hours of punch.
struct OtherWork {
    Id<OtherWork> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<OtherWork> replaces;
    bool removed = false;
    int position = 0;
    Id<Level> level;
    Id<Room> room;
    std::string name;
    Task task = Task::other;
    Quantity quantity = Quantity::count(1); ///< in the task's unit
    Id<Profile> profile;                    ///< material by length; none: no stick
    Length length;                          ///< of that material
    Money material;                         ///< bought outright for it, besides the profile
    std::string note;
    MarkKind marked = MarkKind::none;
    std::vector<PlanPoint> marks; ///< on the plan; `quantity` is then what they come to

    bool operator==(const OtherWork&) const = default;
};

template <>
struct Describe<OtherWork> {
    static constexpr std::string_view table = "other_work";
    static constexpr std::string_view noun = "other work";
    static constexpr void allFields(auto&& take) {
        take(field("id", &OtherWork::id), field("plan", &OtherWork::plan),
            field("variant", &OtherWork::variant), field("replaces", &OtherWork::replaces),
            field("removed", &OtherWork::removed), field("position", &OtherWork::position),
            field("level", &OtherWork::level), field("room", &OtherWork::room),
            field("name", &OtherWork::name), field("task", &OtherWork::task),
            field("quantity", &OtherWork::quantity), field("profile", &OtherWork::profile),
            field("length", &OtherWork::length), field("material", &OtherWork::material),
            field("note", &OtherWork::note), field("marked", &OtherWork::marked),
            field("marks", &OtherWork::marks));
    }
};

} // namespace miterbook
