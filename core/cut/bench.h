// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "book/profile.h"
#include "cut/assembly_line.h"
#include "cut/moisture.h"

#include <string>

namespace miterbook {

/// Which of the bench's two ways of joining is used.
enum class JoiningChoice { first, second };

template <>
struct Words<JoiningChoice> {
    static constexpr std::array list{
        Word{JoiningChoice::first, "the first"}, Word{JoiningChoice::second, "the second"}};
};

/// How the shop cuts and assembles: settings of saw, bench and label sheet. One row, id 1. Starter
/// values are common practice where no source is named.
struct Bench {
    Id<Bench> id;
    Length paintTolerance = Length::sixteenths(1); ///< a setting may miss a length by this
    Length stainTolerance = Length::thirtySeconds(1);
    Length askSquare = Length::sixteenths(2);  ///< diagonals apart: flagged
    Length stopSquare = Length::sixteenths(4); ///< diagonals apart: stop and ask
    Length bowOver = Length::sixteenths(2);    ///< middle off its ends: flagged
    Length jambOver = Length::sixteenths(1);   ///< jamb proud or shy: flagged
    Length planOver = Length::sixteenths(8);   ///< off the plan's size: asked about
    Length shortPiece = Length::inches(8);     ///< under it hands come within 6 in of the blade
    Length floorFrame = Length::inches(72);    ///< a side over it: assembled on the floor
    Length fence = Length::inches(20);         ///< of the saw, on one side of the blade
    MinutesPerUnit stopMove = MinutesPerUnit::hundredths(75);
    MinutesPerUnit tapePull = MinutesPerUnit::hundredths(50);
    JoiningChoice joining = JoiningChoice::first;
    std::string firstName = "yellow glue";
    MinutesPerUnit firstMakeUp = MinutesPerUnit::whole(2); ///< a corner
    MinutesPerUnit firstDwell = MinutesPerUnit::whole(30); ///< glue makers: 30 to 60 min clamped
    int firstClamps = 16;
    UnitPrice firstCost = UnitPrice::cents(3); ///< a corner
    MinutesPerUnit firstFastener = MinutesPerUnit::whole(1);
    UnitPrice firstFastenerCost = UnitPrice::cents(6);
    Length firstFastenerOver; ///< weak on end grain: at any width
    std::string secondName = "reactive hot melt";
    MinutesPerUnit secondMakeUp = MinutesPerUnit::hundredths(75);
    MinutesPerUnit secondDwell = MinutesPerUnit::whole(2);
    int secondClamps = 4;
    UnitPrice secondCost = UnitPrice::cents(20);
    MinutesPerUnit secondFastener = MinutesPerUnit::whole(1);
    UnitPrice secondFastenerCost = UnitPrice::cents(6);
    Length secondFastenerOver = Length::sixteenths(56);
    Wood wood = Wood::poplar;
    Grain grain = Grain::flat;
    int rackTemperature = 55; ///< degrees Fahrenheit, where the trim lies
    Percent rackHumidity = Percent::whole(60);
    int houseTemperature = 70; ///< in the finished house
    Percent houseHumidity = Percent::whole(40);
    int labelColumns = 3; ///< labels on a sheet
    int labelRows = 10;
    Length labelWidth = Length::sixteenths(42); ///< 2 5/8
    Length labelHeight = Length::inches(1);
    Length labelLeft = Length::sixteenths(3); ///< edge of the sheet to the first label
    Length labelTop = Length::sixteenths(8);
    Length labelGap = Length::sixteenths(2); ///< between columns

    Length tolerance(Finish finish) const {
        return finish == Finish::stain ? stainTolerance : paintTolerance;
    }
    const std::string& joiningName(JoiningChoice choice) const {
        return choice == JoiningChoice::first ? firstName : secondName;
    }
    bool operator==(const Bench&) const = default;
};

/// One of the bench's ways of joining, in the numbers that assembly is reckoned with.
WayOfJoining wayOfJoining(const Bench& bench, JoiningChoice choice);

template <>
struct Describe<Bench> {
    static constexpr std::string_view table = "bench";
    static constexpr std::string_view noun = "saw and bench settings";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Bench::id), field("paint_tolerance", &Bench::paintTolerance),
            field("stain_tolerance", &Bench::stainTolerance),
            field("ask_square", &Bench::askSquare), field("stop_square", &Bench::stopSquare),
            field("bow_over", &Bench::bowOver), field("jamb_over", &Bench::jambOver),
            field("plan_over", &Bench::planOver), field("short_piece", &Bench::shortPiece),
            field("floor_frame", &Bench::floorFrame), field("fence", &Bench::fence),
            field("stop_move", &Bench::stopMove), field("tape_pull", &Bench::tapePull),
            field("joining", &Bench::joining), field("first_name", &Bench::firstName),
            field("first_make_up", &Bench::firstMakeUp), field("first_dwell", &Bench::firstDwell),
            field("first_clamps", &Bench::firstClamps), field("first_cost", &Bench::firstCost),
            field("first_fastener", &Bench::firstFastener),
            field("first_fastener_cost", &Bench::firstFastenerCost),
            field("first_fastener_over", &Bench::firstFastenerOver),
            field("second_name", &Bench::secondName), field("second_make_up", &Bench::secondMakeUp),
            field("second_dwell", &Bench::secondDwell),
            field("second_clamps", &Bench::secondClamps), field("second_cost", &Bench::secondCost),
            field("second_fastener", &Bench::secondFastener),
            field("second_fastener_cost", &Bench::secondFastenerCost),
            field("second_fastener_over", &Bench::secondFastenerOver), field("wood", &Bench::wood),
            field("grain", &Bench::grain), field("rack_temperature", &Bench::rackTemperature),
            field("rack_humidity", &Bench::rackHumidity),
            field("house_temperature", &Bench::houseTemperature),
            field("house_humidity", &Bench::houseHumidity),
            field("label_columns", &Bench::labelColumns), field("label_rows", &Bench::labelRows),
            field("label_width", &Bench::labelWidth), field("label_height", &Bench::labelHeight),
            field("label_left", &Bench::labelLeft), field("label_top", &Bench::labelTop),
            field("label_gap", &Bench::labelGap));
    }
};

} // namespace miterbook
