// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "review/house_result.h"
#include "review/shrinkage.h"

#include <vector>

namespace miterbook {

/// What finished houses are compared by.
enum class CompareBy { plan, builder, year };

template <>
struct Words<CompareBy> {
    static constexpr std::array list{
        Word{CompareBy::plan, "plan"},
        Word{CompareBy::builder, "builder"},
        Word{CompareBy::year, "year"},
    };
};

/// The houses of one plan, builder or year together.
struct GroupResult {
    std::int64_t key = 0; ///< id of the plan or builder, or the year
    int houses = 0;
    Hours bid;
    Hours used;
    Money price;
    Money cost;
    double hoursPerOpening = 0; ///< doors and windows; 0 without any
    double hoursPer100Base = 0; ///< per 100 ft of base; 0 without any
    double overrun = 0;         ///< mean over houses of used / bid hours - 1
    double overrunSpread = 0;   ///< standard deviation over its houses; 0 with one
    ShrunkMean expected;        ///< the overrun to expect of the next house of the kind
    double callbacks = 0;       ///< days to expect of the next house of the kind

    Money profit() const { return price - cost; }
    Money profitPerHouse() const;
    Money profitPerHour() const;
    /// Hours for 100 ft of base, or for 100 m where lengths are written so.
    double hoursPer100(LengthUnit written) const;
    bool operator==(const GroupResult&) const = default;
};

/// Groups houses, best profit per man-hour first. Houses without a plan or builder make a group of
/// key 0. What is expected of the next house is shrunk towards all houses: the overrun as normal
/// means whose houses scatter as all do about their groups (between groups by DerSimonian and
/// Laird), callback days as gamma-Poisson with all houses' mean weighing as one house.
std::vector<GroupResult> compareHouses(const std::vector<HouseResult>& houses, CompareBy by);

/// A piece of work of a plan that loses money.
struct Loss {
    Id<Plan> plan;
    PieceOfWork work = PieceOfWork::doors;
    int houses = 0;
    Money lost; ///< over all its houses; positive
    Hours over; ///< hours used beyond those bid; negative: fewer

    Money perHouse() const;
    bool operator==(const Loss&) const = default;
};

/// Which piece of work loses money where: most lost first.
std::vector<Loss> losses(const std::vector<HouseResult>& houses);

} // namespace miterbook
