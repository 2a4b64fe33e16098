// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/bench_columns.h"

#include "papers/cut_words.h"
#include "widgets/columns.h"

namespace miterbook {

namespace {

/// Settings go down to 1/32 in, whatever fraction the shop writes elsewhere.
template <Length Bench::*M>
constexpr Column<Bench> setting(const char* title) {
    Column<Bench> column = lengthColumn<M, Zero::shown>(title);
    column.write = [](std::int64_t nm, const Book& book) {
        return text(formatLength(Length::nanometres(nm), sawStyle(book.prices.shop())));
    };
    return column;
}

constexpr Column<Bench> benchList[] = {
    setting<&Bench::paintTolerance>(QT_TRANSLATE_NOOP("Column", "A stop may miss by, paint grade")),
    setting<&Bench::stainTolerance>(QT_TRANSLATE_NOOP("Column", "A stop may miss by, stain grade")),
    setting<&Bench::askSquare>(QT_TRANSLATE_NOOP("Column", "Diagonals apart: look at")),
    setting<&Bench::stopSquare>(QT_TRANSLATE_NOOP("Column", "Diagonals apart: stop and ask")),
    setting<&Bench::bowOver>(QT_TRANSLATE_NOOP("Column", "Bow to look at")),
    setting<&Bench::jambOver>(QT_TRANSLATE_NOOP("Column", "Jamb proud or shy to look at")),
    setting<&Bench::planOver>(QT_TRANSLATE_NOOP("Column", "Off the plan's size to ask about")),
    setting<&Bench::shortPiece>(QT_TRANSLATE_NOOP("Column", "Too short for safe hands under")),
    setting<&Bench::floorFrame>(QT_TRANSLATE_NOOP("Column", "Joined on the floor over")),
    setting<&Bench::fence>(QT_TRANSLATE_NOOP("Column", "Fence beside the blade")),
    minutesColumn<&Bench::stopMove>(QT_TRANSLATE_NOOP("Column", "Minutes for a stop move")),
    minutesColumn<&Bench::tapePull>(QT_TRANSLATE_NOOP("Column", "Minutes for a tape pull")),
    wordColumn<&Bench::joining>(QT_TRANSLATE_NOOP("Column", "Way of joining in use")),
    textColumn<&Bench::firstName>(QT_TRANSLATE_NOOP("Column", "First way")),
    minutesColumn<&Bench::firstMakeUp>(QT_TRANSLATE_NOOP("Column", "First: minutes a corner")),
    minutesColumn<&Bench::firstDwell>(QT_TRANSLATE_NOOP("Column", "First: minutes in the clamp")),
    wholeColumn<&Bench::firstClamps, 1, 500>(QT_TRANSLATE_NOOP("Column", "First: clamps")),
    unitPriceColumn<&Bench::firstCost>(QT_TRANSLATE_NOOP("Column", "First: goods a corner")),
    minutesColumn<&Bench::firstFastener>(
        QT_TRANSLATE_NOOP("Column", "First: minutes more with a biscuit")),
    unitPriceColumn<&Bench::firstFastenerCost>(QT_TRANSLATE_NOOP("Column", "First: a biscuit")),
    setting<&Bench::firstFastenerOver>(
        QT_TRANSLATE_NOOP("Column", "First: biscuits in casing over")),
    textColumn<&Bench::secondName>(QT_TRANSLATE_NOOP("Column", "Second way")),
    minutesColumn<&Bench::secondMakeUp>(QT_TRANSLATE_NOOP("Column", "Second: minutes a corner")),
    minutesColumn<&Bench::secondDwell>(QT_TRANSLATE_NOOP("Column", "Second: minutes in the clamp")),
    wholeColumn<&Bench::secondClamps, 1, 500>(QT_TRANSLATE_NOOP("Column", "Second: clamps")),
    unitPriceColumn<&Bench::secondCost>(QT_TRANSLATE_NOOP("Column", "Second: goods a corner")),
    minutesColumn<&Bench::secondFastener>(
        QT_TRANSLATE_NOOP("Column", "Second: minutes more with a biscuit")),
    unitPriceColumn<&Bench::secondFastenerCost>(QT_TRANSLATE_NOOP("Column", "Second: a biscuit")),
    setting<&Bench::secondFastenerOver>(
        QT_TRANSLATE_NOOP("Column", "Second: biscuits in casing over")),
    wordColumn<&Bench::wood>(QT_TRANSLATE_NOOP("Column", "Wood of the trim")),
    wordColumn<&Bench::grain>(QT_TRANSLATE_NOOP("Column", "Grain of its face")),
    wholeColumn<&Bench::rackTemperature, -40, 130>(
        QT_TRANSLATE_NOOP("Column", "Where the trim lies, \u00b0F")),
    percentColumn<&Bench::rackHumidity>(
        QT_TRANSLATE_NOOP("Column", "Where the trim lies, humidity")),
    wholeColumn<&Bench::houseTemperature, -40, 130>(
        QT_TRANSLATE_NOOP("Column", "Finished house, \u00b0F")),
    percentColumn<&Bench::houseHumidity>(QT_TRANSLATE_NOOP("Column", "Finished house, humidity")),
    wholeColumn<&Bench::labelColumns, 1, 20>(QT_TRANSLATE_NOOP("Column", "Labels across a sheet")),
    wholeColumn<&Bench::labelRows, 1, 60>(QT_TRANSLATE_NOOP("Column", "Labels down a sheet")),
    setting<&Bench::labelWidth>(QT_TRANSLATE_NOOP("Column", "Label width")),
    setting<&Bench::labelHeight>(QT_TRANSLATE_NOOP("Column", "Label height")),
    setting<&Bench::labelLeft>(QT_TRANSLATE_NOOP("Column", "Left edge to the first label")),
    setting<&Bench::labelTop>(QT_TRANSLATE_NOOP("Column", "Top edge to the first label")),
    setting<&Bench::labelGap>(QT_TRANSLATE_NOOP("Column", "Between label columns")),
};

} // namespace

std::span<const Column<Bench>> benchColumns() {
    return benchList;
}

} // namespace miterbook
