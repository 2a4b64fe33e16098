// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "basics/percent.h"

namespace miterbook {

/// How the shop works: settings that shape pieces and cutting. One row, id 1. Starter values from
/// common practice unless a source is named in the starter book.
struct Practice {
    Id<Practice> id;
    Length reveal = Length::sixteenths(3);       ///< where an opening has none of its own
    Length floorGap;                             ///< legs held off the finished floor
    Length horn = Length::sixteenths(12);        ///< stool beyond the casing, each end
    Length headOverhang = Length::sixteenths(8); ///< butted head beyond the legs, each end
    Length returnPiece = Length::sixteenths(8);  ///< material for one apron or stool return
    Length kerf = Length::sixteenths(2);
    Length endTrim;                         ///< taken off each stick, both ends together
    int spareSticks = 0;                    ///< added to each profile's order
    Length keepOffcut = Length::inches(24); ///< shortest remainder worth the rack
    Length scarf = Length::inches(1);       ///< extra length for one splice in a run
    Length longSide = Length::inches(
        60); ///< a casing side with a long point over this takes longer
    Length longestLeg = Length::inches(84);   ///< 7 ft legs: longer ones are warned of
    Angle sawSwing = Angle::degrees(50);      ///< saw swings this many degrees either way
    Length shelfSupport = Length::inches(40); ///< largest span between shelf supports
    Length balusterGap = Length::inches(4);   ///< largest clear gap; local code governs
    /// What an offcut of keepOffcut or more counts for when sticks are planned: so much of what a
    /// new stick costs by length. 0: nothing, sticks are planned for their price alone.
    Percent offcutWorth;

    bool operator==(const Practice&) const = default;
};

template <>
struct Describe<Practice> {
    static constexpr std::string_view table = "practice";
    static constexpr std::string_view noun = "shop practice";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Practice::id), field("reveal", &Practice::reveal),
            field("floor_gap", &Practice::floorGap), field("horn", &Practice::horn),
            field("head_overhang", &Practice::headOverhang),
            field("return_piece", &Practice::returnPiece), field("kerf", &Practice::kerf),
            field("end_trim", &Practice::endTrim), field("spare_sticks", &Practice::spareSticks),
            field("keep_offcut", &Practice::keepOffcut), field("scarf", &Practice::scarf),
            field("long_side", &Practice::longSide), field("longest_leg", &Practice::longestLeg),
            field("saw_swing", &Practice::sawSwing),
            field("shelf_support", &Practice::shelfSupport),
            field("baluster_gap", &Practice::balusterGap),
            field("offcut_worth", &Practice::offcutWorth));
    }
};

} // namespace miterbook
