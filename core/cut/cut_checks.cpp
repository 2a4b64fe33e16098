// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/cut_checks.h"

#include "basics/length_text.h"
#include "book/check_parts.h"
#include "plan/plan_checks.h"

#include <array>

namespace miterbook {

namespace {

/// A length that may be set from `least` to `most`.
struct LengthSetting {
    const char* name;
    Length value;
    Length least;
    Length most;
};

struct MinuteSetting {
    const char* name;
    MinutesPerUnit value;
    bool zeroAllowed;
};

constexpr std::array<LengthSetting, 17> lengthsOf(const Bench& bench) {
    constexpr Length none;
    constexpr Length inch = Length::inches(1);
    return {{
        {"paint grade tolerance", bench.paintTolerance, none, inch},
        {"stain grade tolerance", bench.stainTolerance, none, inch},
        {"difference of diagonals to ask about", bench.askSquare, none, 6 * inch},
        {"difference of diagonals to stop at", bench.stopSquare, none, 6 * inch},
        {"bow", bench.bowOver, none, 6 * inch},
        {"jamb proud or shy", bench.jambOver, none, 6 * inch},
        {"difference from the plan", bench.planOver, none, 36 * inch},
        {"shortest piece cut by hand", bench.shortPiece, none, 36 * inch},
        {"longest side at the bench", bench.floorFrame, 12 * inch, 300 * inch},
        {"saw fence", bench.fence, inch, 300 * inch},
        {"width above which corners are fastened", bench.firstFastenerOver, none, 24 * inch},
        {"width above which corners are fastened", bench.secondFastenerOver, none, 24 * inch},
        {"label width", bench.labelWidth, inch, 20 * inch},
        {"label height", bench.labelHeight, inch / 2, 20 * inch},
        {"left edge of the labels", bench.labelLeft, none, 4 * inch},
        {"top edge of the labels", bench.labelTop, none, 4 * inch},
        {"gap between labels", bench.labelGap, none, 4 * inch},
    }};
}

constexpr std::array<MinuteSetting, 8> minutesOf(const Bench& bench) {
    return {{
        {"stop move", bench.stopMove, true},
        {"tape pull", bench.tapePull, true},
        {"corner", bench.firstMakeUp, false},
        {"clamp", bench.firstDwell, true},
        {"fastener", bench.firstFastener, true},
        {"corner", bench.secondMakeUp, false},
        {"clamp", bench.secondDwell, true},
        {"fastener", bench.secondFastener, true},
    }};
}

bool isReading(Length length) {
    return length >= Length() && length <= longestOpening;
}

bool isAir(int fahrenheit, Percent humidity) {
    return fahrenheit >= -40 && fahrenheit <= 130 && humidity >= Percent()
        && humidity <= Percent::hundred();
}

bool isFair(UnitPrice price) {
    return price >= UnitPrice() && price <= UnitPrice::cents(10'000);
}

void requireCounts(Checks& checks, const Bench& bench) {
    const auto clamps = [](int count) { return count >= 1 && count <= 500; };
    checks.require(clamps(bench.firstClamps) && clamps(bench.secondClamps),
        "A bench has from 1 to 500 clamps.");
    checks.require(bench.labelColumns >= 1 && bench.labelColumns <= 20 && bench.labelRows >= 1
            && bench.labelRows <= 60,
        "A label sheet has up to 20 columns and 60 rows.");
    checks.require(isAir(bench.rackTemperature, bench.rackHumidity)
            && isAir(bench.houseTemperature, bench.houseHumidity),
        "Air is from -40 to 130 degrees Fahrenheit and from 0 to 100 % humid.");
    checks.require(isFair(bench.firstCost) && isFair(bench.firstFastenerCost)
            && isFair(bench.secondCost) && isFair(bench.secondFastenerCost),
        "What goes into one corner costs from 0 to 100.");
}

} // namespace

Result<void> checkBench(const Bench& bench) {
    Checks checks;
    for (const LengthSetting& setting : lengthsOf(bench))
        checks.require(setting.value >= setting.least && setting.value <= setting.most,
            std::string("The setting \"") + setting.name + "\" is from "
                + formatLengthWithUnit(setting.least) + " to " + formatLengthWithUnit(setting.most)
                + ".");
    for (const MinuteSetting& setting : minutesOf(bench)) {
        const std::int64_t value = setting.value.hundredths();
        checks.require(value >= (setting.zeroAllowed ? 0 : 1) && value <= 2'880'00,
            std::string("The minutes for one ") + setting.name + " do not make sense.");
    }
    requireCounts(checks, bench);
    return checks.result();
}

Result<void> checkMeasure(const Measure& measure) {
    Checks checks;
    checks.require(static_cast<bool>(measure.opening), "A measure belongs to an opening.");
    checks.require(
        measure.unit >= 1 && measure.unit <= 10'000, "Openings alike are counted from 1.");
    for (const Length reading : {measure.widthTop, measure.widthMiddle, measure.widthBottom,
             measure.heightLeft, measure.heightMiddle, measure.heightRight})
        checks.require(
            isReading(reading), "A width or height at an opening is from 0 to 40 ft (12.2 m).");
    for (const Length reading : {measure.diagonalUp, measure.diagonalDown})
        checks.require(reading >= Length() && reading <= 2 * longestOpening,
            "A diagonal of an opening is from 0 to 80 ft (24.4 m).");
    checks.require(measure.proud >= -Length::inches(12) && measure.proud <= Length::inches(12),
        "A jamb is at most 12 in (305 mm) proud or shy.");
    return checks.result();
}

Result<void> checkCutPiece(const CutPiece& piece) {
    return Checks()
        .require(piece.unit >= 1 && piece.copy >= 1 && piece.stop >= 0 && piece.stick >= 0,
            "The numbers of a piece on the saw sheet count from 1.")
        .require(piece.shortPoint >= Length() && piece.longPoint >= piece.shortPoint
                && piece.longPoint <= longestSensible,
            "A piece's long point is not shorter than its short point.")
        .result();
}

Result<void> checkRackMove(const RackMove& move) {
    return Checks()
        .require(move.stick >= 1, "What goes into the rack or out of it is a stick of the sheet.")
        .require(
            move.length > Length() && move.length <= longestSensible, "An offcut has a length.")
        .result();
}

Result<void> checkSawTest(const SawTest& test) {
    const Length off = test.set > test.measured ? test.set - test.measured
                                                : test.measured - test.set;
    return Checks()
        .require(test.set >= Length() && test.measured >= Length() && test.set <= longestSensible,
            "A test cut has a length.")
        .require(test.measured == Length() || test.set == Length() || off <= Length::inches(2),
            "A test cut is within 2 in of what the stop was set to; read both again.")
        .require(test.corner == Angle()
                || (test.corner >= Angle::degrees(45) && test.corner <= Angle::degrees(135)),
            "A test corner is near 90 degrees.")
        .result();
}

Result<void> checkSawSpot(const SawSpot& spot) {
    const auto isNear
        = [](Length length) { return length >= -longestSensible && length <= longestSensible; };
    return Checks()
        .require(spot.level > 0, "A saw stands on a level.")
        .require(isNear(spot.x) && isNear(spot.y), "A saw stands in its house.")
        .result();
}

} // namespace miterbook
