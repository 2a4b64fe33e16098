// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/words.h"
#include "book/origin.h"

#include <string>

namespace miterbook {

/// Goods bought by the each that the takeoff counts.
enum class PartUse {
    passageSet,
    privacySet,
    dummySet,
    keyedSet,
    deadbolt,
    doorStop,
    closetRodBracket,
    shelfBracket,
    baluster,
    newel,
    treadKit,
    archCasing,
    other,
};

template <>
struct Words<PartUse> {
    static constexpr std::array list{
        Word{PartUse::passageSet, "passage set"},
        Word{PartUse::privacySet, "privacy set"},
        Word{PartUse::dummySet, "dummy set"},
        Word{PartUse::keyedSet, "keyed set"},
        Word{PartUse::deadbolt, "deadbolt"},
        Word{PartUse::doorStop, "door stop"},
        Word{PartUse::closetRodBracket, "closet rod bracket"},
        Word{PartUse::shelfBracket, "shelf bracket"},
        Word{PartUse::baluster, "baluster"},
        Word{PartUse::newel, "newel"},
        Word{PartUse::treadKit, "tread and riser"},
        Word{PartUse::archCasing, "arched casing, made to order"},
        Word{PartUse::other, "other part"},
    };
};

/// Goods bought by the each and what one costs the shop.
struct Part {
    Id<Part> id;
    std::string name;
    PartUse use = PartUse::other;
    Money price;
    bool builderSupplies = false; ///< the builder buys it: counted and ordered by nobody, costs 0
    Origin origin = Origin::shop;

    bool operator==(const Part&) const = default;
};

template <>
struct Describe<Part> {
    static constexpr std::string_view table = "part";
    static constexpr std::string_view noun = "part";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Part::id), field("name", &Part::name), field("use", &Part::use),
            field("price", &Part::price), field("builder_supplies", &Part::builderSupplies),
            field("origin", &Part::origin));
    }
};

/// Nails, adhesive, caulk: what is used up along the trim.
struct Consumable {
    Id<Consumable> id;
    std::string name;
    Money price;        ///< for one box, tube or cartridge
    int feetEach = 100; ///< running feet of trim that one serves; positive
    Origin origin = Origin::shop;
    std::string note;

    bool operator==(const Consumable&) const = default;
};

template <>
struct Describe<Consumable> {
    static constexpr std::string_view table = "consumable";
    static constexpr std::string_view noun = "consumable";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Consumable::id), field("name", &Consumable::name),
            field("price", &Consumable::price), field("feet_each", &Consumable::feetEach),
            field("origin", &Consumable::origin), field("note", &Consumable::note));
    }
};

} // namespace miterbook
