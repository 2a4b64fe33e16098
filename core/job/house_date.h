// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/result.h"
#include "basics/words.h"
#include "book/crew.h"

#include <string>
#include <vector>

namespace miterbook {

struct House;

/// What happens at a house on some days.
enum class HouseDateKind { delivery, firstTrip, secondTrip, punch, other };

template <>
struct Words<HouseDateKind> {
    static constexpr std::array list{
        Word{HouseDateKind::delivery, "delivery"},
        Word{HouseDateKind::firstTrip, "first trip"},
        Word{HouseDateKind::secondTrip, "second trip"},
        Word{HouseDateKind::punch, "punch"},
        Word{HouseDateKind::other, "other"},
    };
};

/// Days at a house, and who of the crew goes there.
struct HouseDate {
    Id<HouseDate> id;
    Id<House> house;
    HouseDateKind kind = HouseDateKind::firstTrip;
    Date from = noDate;
    Date to = noDate; ///< the last day; none: one day
    std::vector<Id<CrewMember>> crew;
    std::string note;

    Date lastDay() const { return to.ok() ? to : from; }
    bool operator==(const HouseDate&) const = default;
};

template <>
struct Describe<HouseDate> {
    static constexpr std::string_view table = "house_date";
    static constexpr std::string_view noun = "date of a house";
    static constexpr void allFields(auto&& take) {
        take(field("id", &HouseDate::id), field("house", &HouseDate::house),
            field("kind", &HouseDate::kind), field("from", &HouseDate::from),
            field("to", &HouseDate::to), field("crew", &HouseDate::crew),
            field("note", &HouseDate::note));
    }
};

/// A first day, and a last one not before it and not a year after.
Result<void> checkHouseDate(const HouseDate& date);

} // namespace miterbook
