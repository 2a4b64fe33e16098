// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "basics/words.h"
#include "book/builder.h"
#include "book/profile.h"

#include <string>

namespace miterbook {

struct House;

/// A builder's house plans for one community or series.
struct PlanSet {
    Id<PlanSet> id;
    Id<Builder> builder;
    std::string name;
    std::string community;

    bool operator==(const PlanSet&) const = default;
};

template <>
struct Describe<PlanSet> {
    static constexpr std::string_view table = "plan_set";
    static constexpr std::string_view noun = "plan set";
    static constexpr void allFields(auto&& take) {
        take(field("id", &PlanSet::id), field("builder", &PlanSet::builder),
            field("name", &PlanSet::name), field("community", &PlanSet::community));
    }
};

/// One house design; or, where `house` is set, that house's own copy of it. The profiles are what
/// the plan's openings and rooms use where they name none of their own.
struct Plan {
    Id<Plan> id;
    Id<PlanSet> set;
    Id<House> house;
    std::string name;
    int floorArea = 0; ///< square feet, for the dollars per square foot check only
    Id<Profile> windowCasing;
    Id<Profile> doorCasing;
    Id<Profile> stool;
    Id<Profile> jamb;
    Id<Profile> base;
    Id<Profile> shoe;
    Id<Profile> crown;
    std::string note;

    bool operator==(const Plan&) const = default;
};

template <>
struct Describe<Plan> {
    static constexpr std::string_view table = "plan";
    static constexpr std::string_view noun = "plan";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Plan::id), field("set", &Plan::set), field("house", &Plan::house),
            field("name", &Plan::name), field("floor_area", &Plan::floorArea),
            field("window_casing", &Plan::windowCasing), field("door_casing", &Plan::doorCasing),
            field("stool", &Plan::stool), field("jamb", &Plan::jamb), field("base", &Plan::base),
            field("shoe", &Plan::shoe), field("crown", &Plan::crown), field("note", &Plan::note));
    }
};

enum class VariantKind { elevation, option };

template <>
struct Words<VariantKind> {
    static constexpr std::array list{
        Word{VariantKind::elevation, "elevation"}, Word{VariantKind::option, "option"}};
};

/// A named difference against the plan. Its content is the rows of the plan that carry its id:
/// a row that replaces none is added, one that replaces a row changes it, and one marked removed
/// takes it away.
struct Variant {
    Id<Variant> id;
    Id<Plan> plan;
    VariantKind kind = VariantKind::option;
    std::string name;
    std::string note;
    bool reversed = false; ///< the plan built left for right: door hands change sides

    bool operator==(const Variant&) const = default;
};

template <>
struct Describe<Variant> {
    static constexpr std::string_view table = "variant";
    static constexpr std::string_view noun = "elevation or option";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Variant::id), field("plan", &Variant::plan),
            field("kind", &Variant::kind), field("name", &Variant::name),
            field("note", &Variant::note), field("reversed", &Variant::reversed));
    }
};

/// A profile taken in place of another wherever the plan uses it, in one variant.
struct Swap {
    Id<Swap> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Profile> from;
    Id<Profile> to;

    bool operator==(const Swap&) const = default;
};

template <>
struct Describe<Swap> {
    static constexpr std::string_view table = "swap";
    static constexpr std::string_view noun = "profile swap";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Swap::id), field("plan", &Swap::plan), field("variant", &Swap::variant),
            field("from", &Swap::from), field("to", &Swap::to));
    }
};

/// One storey of a plan.
struct Level {
    Id<Level> id;
    Id<Plan> plan;
    Id<Variant> variant;
    Id<Level> replaces;
    bool removed = false;
    int position = 0;
    std::string name;
    Length ceiling = Length::feet(8);
    bool upper = false; ///< trim is carried up a stair

    bool operator==(const Level&) const = default;
};

template <>
struct Describe<Level> {
    static constexpr std::string_view table = "level";
    static constexpr std::string_view noun = "level";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Level::id), field("plan", &Level::plan),
            field("variant", &Level::variant), field("replaces", &Level::replaces),
            field("removed", &Level::removed), field("position", &Level::position),
            field("name", &Level::name), field("ceiling", &Level::ceiling),
            field("upper", &Level::upper));
    }
};

} // namespace miterbook
