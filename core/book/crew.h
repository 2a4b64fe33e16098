// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "book/origin.h"

#include <string>

namespace miterbook {

/// Somebody who works in the crew.
struct CrewMember {
    Id<CrewMember> id;
    std::string name;
    Money wage;         ///< an hour, before burden
    bool active = true; ///< counts in the crew rate

    bool operator==(const CrewMember&) const = default;
};

template <>
struct Describe<CrewMember> {
    static constexpr std::string_view table = "crew_member";
    static constexpr std::string_view noun = "crew member";
    static constexpr void allFields(auto&& take) {
        take(field("id", &CrewMember::id), field("name", &CrewMember::name),
            field("wage", &CrewMember::wage), field("active", &CrewMember::active));
    }
};

/// One item of labour burden: a percentage of wages, and/or dollars a year for each person. Of
/// items of one name the latest that has begun is in force.
struct Burden {
    Id<Burden> id;
    std::string name;
    Percent ofWages;
    Money perYear; ///< for each person; spread over the shop's working hours a year
    int year = 0;  ///< the year the figures are for; 0 when they are the shop's own
    Origin origin = Origin::shop;
    std::string source;
    Date from = noDate; ///< in force from this day; none: always

    bool operator==(const Burden&) const = default;
};

template <>
struct Describe<Burden> {
    static constexpr std::string_view table = "burden";
    static constexpr std::string_view noun = "burden item";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Burden::id), field("name", &Burden::name),
            field("of_wages", &Burden::ofWages), field("per_year", &Burden::perYear),
            field("year", &Burden::year), field("origin", &Burden::origin),
            field("source", &Burden::source), field("from", &Burden::from));
    }
};

} // namespace miterbook
