// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "plan/opening.h"

#include <string>

namespace miterbook {

/// What the tape said at one opening of a house: sizes jamb inside, zero where nothing was read.
/// Heights of doors are from the finished floor.
struct Measure {
    Id<Measure> id;
    Id<Plan> plan; ///< a house's own copy
    Id<Opening> opening;
    int unit = 1;     ///< which of the openings alike that the plan counts in one row, from 1
    int position = 0; ///< place in walking order (see OpeningUnit::place); 0: as the plan has it
    Length widthTop;
    Length widthMiddle;
    Length widthBottom;
    Length heightLeft;
    Length heightMiddle;
    Length heightRight;
    Length diagonalUp;   ///< lower left to upper right
    Length diagonalDown; ///< upper left to lower right
    Length proud;        ///< of the wall's face; negative: the jamb is shy
    std::string note;

    bool operator==(const Measure&) const = default;
};

template <>
struct Describe<Measure> {
    static constexpr std::string_view table = "measure";
    static constexpr std::string_view noun = "measure";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Measure::id), field("plan", &Measure::plan),
            field("opening", &Measure::opening), field("unit", &Measure::unit),
            field("position", &Measure::position), field("width_top", &Measure::widthTop),
            field("width_middle", &Measure::widthMiddle),
            field("width_bottom", &Measure::widthBottom),
            field("height_left", &Measure::heightLeft),
            field("height_middle", &Measure::heightMiddle),
            field("height_right", &Measure::heightRight),
            field("diagonal_up", &Measure::diagonalUp),
            field("diagonal_down", &Measure::diagonalDown), field("proud", &Measure::proud),
            field("note", &Measure::note));
    }
};

} // namespace miterbook
