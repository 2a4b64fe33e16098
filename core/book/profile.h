// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "basics/money.h"
#include "basics/words.h"
#include "book/origin.h"
#include "book/section.h"

#include <string>

namespace miterbook {

enum class Finish { paint, stain };

template <>
struct Words<Finish> {
    static constexpr std::array list{Word{Finish::paint, "paint"}, Word{Finish::stain, "stain"}};
};

/// What a moulding is run as.
enum class ProfileUse {
    casing,
    base,
    baseCap,
    shoe,
    crown,
    stool,
    jamb,
    backBand,
    chairRail,
    stop,
    board,
    cleat,
    shelf,
    rod,
    handrail,
    other,
};

template <>
struct Words<ProfileUse> {
    static constexpr std::array list{
        Word{ProfileUse::casing, "casing"},
        Word{ProfileUse::base, "base"},
        Word{ProfileUse::baseCap, "base cap"},
        Word{ProfileUse::shoe, "shoe"},
        Word{ProfileUse::crown, "crown"},
        Word{ProfileUse::stool, "stool"},
        Word{ProfileUse::jamb, "jamb"},
        Word{ProfileUse::backBand, "back band"},
        Word{ProfileUse::chairRail, "chair rail"},
        Word{ProfileUse::stop, "stop"},
        Word{ProfileUse::board, "board"},
        Word{ProfileUse::cleat, "cleat"},
        Word{ProfileUse::shelf, "shelf"},
        Word{ProfileUse::rod, "rod"},
        Word{ProfileUse::handrail, "handrail"},
        Word{ProfileUse::other, "other"},
    };
};

/// How an inside corner of a run is joined.
enum class Joint { coped, mitered, butted };

template <>
struct Words<Joint> {
    static constexpr std::array list{Word{Joint::coped, "coped"}, Word{Joint::mitered, "mitered"},
        Word{Joint::butted, "butted"}};
};

/// A moulding as the shop buys it.
struct Profile {
    Id<Profile> id;
    std::string name; ///< "WM 445 casing"
    ProfileUse use = ProfileUse::casing;
    Length thickness;
    Length width;         ///< face width; for crown, across the face
    std::string material; ///< "primed pine", "red oak"
    Finish finish = Finish::paint;
    bool hardwood = false;
    Angle springAngle; ///< measured from the wall; 0 when the profile lies flat
    Joint joint = Joint::coped;
    bool symmetric = false; ///< flat stock that may be turned end for end
    Origin origin = Origin::shop;
    std::string note; ///< "verify with your supplier"
    Section section = Section::squareEdge;

    bool operator==(const Profile&) const = default;
};

template <>
struct Describe<Profile> {
    static constexpr std::string_view table = "profile";
    static constexpr std::string_view noun = "profile";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Profile::id), field("name", &Profile::name), field("use", &Profile::use),
            field("thickness", &Profile::thickness), field("width", &Profile::width),
            field("material", &Profile::material), field("finish", &Profile::finish),
            field("hardwood", &Profile::hardwood), field("spring_angle", &Profile::springAngle),
            field("joint", &Profile::joint), field("symmetric", &Profile::symmetric),
            field("origin", &Profile::origin), field("note", &Profile::note),
            field("section", &Profile::section));
    }
};

/// A stock length of a profile.
struct Stick {
    Id<Stick> id;
    Id<Profile> profile;
    Length length;
    Money price;         ///< for one stick
    bool stocked = true; ///< the yard has it; otherwise it is not bought
    Origin origin = Origin::shop;

    bool operator==(const Stick&) const = default;
};

template <>
struct Describe<Stick> {
    static constexpr std::string_view table = "stick";
    static constexpr std::string_view noun = "stick";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Stick::id), field("profile", &Stick::profile),
            field("length", &Stick::length), field("price", &Stick::price),
            field("stocked", &Stick::stocked), field("origin", &Stick::origin));
    }
};

/// For what a supplier quotes a price.
enum class PricePer { stick, foot, hundredFeet, metre };

template <>
struct Words<PricePer> {
    static constexpr std::array list{Word{PricePer::stick, "stick"}, Word{PricePer::foot, "foot"},
        Word{PricePer::hundredFeet, "100 ft"}, Word{PricePer::metre, "metre"}};
};

/// What a stick costs from a day on, as a supplier quoted it.
struct StickPrice {
    Id<StickPrice> id;
    Id<Stick> stick;
    Date from = noDate;
    Money price;      ///< for one stick
    UnitPrice quoted; ///< as it stands in the supplier's list
    PricePer per = PricePer::stick;
    std::string supplier;

    bool operator==(const StickPrice&) const = default;
};

template <>
struct Describe<StickPrice> {
    static constexpr std::string_view table = "stick_price";
    static constexpr std::string_view noun = "supplier price";
    static constexpr void allFields(auto&& take) {
        take(field("id", &StickPrice::id), field("stick", &StickPrice::stick),
            field("from", &StickPrice::from), field("price", &StickPrice::price),
            field("quoted", &StickPrice::quoted), field("per", &StickPrice::per),
            field("supplier", &StickPrice::supplier));
    }
};

/// Usable remainders of a profile kept in the rack.
struct Offcut {
    Id<Offcut> id;
    Id<Profile> profile;
    Length length;
    int count = 1;
    std::string note;

    bool operator==(const Offcut&) const = default;
};

template <>
struct Describe<Offcut> {
    static constexpr std::string_view table = "offcut";
    static constexpr std::string_view noun = "offcut";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Offcut::id), field("profile", &Offcut::profile),
            field("length", &Offcut::length), field("count", &Offcut::count),
            field("note", &Offcut::note));
    }
};

} // namespace miterbook
