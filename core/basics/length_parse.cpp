// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"
#include "basics/length_text.h"
#include "basics/quote.h"

namespace miterbook {

namespace {

constexpr std::int64_t nmPerFoot = 12 * Length::nmPerInch;
constexpr std::int64_t nmPerMillimetre = 1'000'000;

enum class Flaw { none, unreadable, zeroDenominator, doubtfulComma, wholeFraction, wholeFoot };

/// What a measure says, or why it cannot be read.
struct Reading {
    Length length;
    Flaw flaw = Flaw::none;
};

Reading flawed(Flaw flaw) {
    return {{}, flaw};
}

Length times(Ratio ratio, std::int64_t unit) {
    return Length::nanometres(roundedQuotient(Wide(ratio.numerator) * unit, ratio.denominator));
}

Flaw flawOf(const std::optional<Ratio>& number) {
    if (!number)
        return Flaw::unreadable;
    if (number->denominator == 0)
        return Flaw::zeroDenominator;
    return number->isDoubtful ? Flaw::doubtfulComma : Flaw::none;
}

bool takeInchMark(MeasureScanner& scan) {
    scan.skipSpaces();
    return scan.take({"\"", "inches", "inch", "in.", "in"});
}

/// A dash between two parts of a measure, with or without spaces around it.
bool takeDash(MeasureScanner& scan) {
    scan.skipSpaces();
    const bool dash = scan.take({"-"});
    scan.skipSpaces();
    return dash;
}

/// After a whole number of inches, " 1/2" or "-1/2"; adds it to the reading.
Reading withFraction(MeasureScanner& scan, Length whole) {
    const MeasureScanner before = scan;
    takeDash(scan);
    const auto fraction = scan.number();
    if (!fraction) {
        scan = before;
        return {whole};
    }
    if (!fraction->isFraction)
        return flawed(Flaw::unreadable);
    if (const Flaw flaw = flawOf(fraction); flaw != Flaw::none)
        return flawed(flaw);
    if (fraction->numerator >= fraction->denominator)
        return flawed(Flaw::wholeFraction);
    return {whole + times(*fraction, Length::nmPerInch)};
}

/// The inches after feet: nothing, "11", "11 1/2", "1/2", each with or without its mark.
Reading inchesAfterFeet(MeasureScanner& scan, Ratio feet) {
    const Length whole = times(feet, nmPerFoot);
    const bool dash = takeDash(scan);
    if (scan.atEnd() && !dash)
        return {whole};
    const auto number = scan.number();
    if (const Flaw flaw = flawOf(number); flaw != Flaw::none)
        return flawed(flaw);
    if (!feet.isWhole())
        return flawed(Flaw::unreadable);
    const Length inches = times(*number, Length::nmPerInch);
    if (inches >= Length::feet(1))
        return flawed(Flaw::wholeFoot);
    if (number->isFraction && inches >= Length::inches(1))
        return flawed(Flaw::wholeFraction);
    const Reading reading = number->isWhole() ? withFraction(scan, whole + inches)
                                              : Reading{whole + inches};
    takeInchMark(scan);
    return reading;
}

/// Inches and a fraction, or a bare number in the unit that bare numbers have.
Reading inchesOrBare(MeasureScanner& scan, Ratio first, LengthUnit bareUnit) {
    Reading reading{times(first, Length::nmPerInch)};
    bool fraction = first.isFraction;
    if (first.isWhole()) {
        const std::size_t before = scan.rest().size();
        reading = withFraction(scan, reading.length);
        fraction = scan.rest().size() != before;
    }
    const bool marked = takeInchMark(scan);
    if (!marked && !fraction && bareUnit == LengthUnit::millimetres)
        reading.length = times(first, nmPerMillimetre);
    return reading;
}

Reading readMeasure(MeasureScanner& scan, LengthUnit bareUnit) {
    const auto first = scan.number();
    if (const Flaw flaw = flawOf(first); flaw != Flaw::none)
        return flawed(flaw);
    const MeasureScanner afterNumber = scan;
    scan.skipSpaces();
    if (scan.take({"mm"}))
        return {times(*first, nmPerMillimetre)};
    if (scan.take({"cm"}))
        return {times(*first, 10 * nmPerMillimetre)};
    if (scan.take({"m"}))
        return {times(*first, 1000 * nmPerMillimetre)};
    if (scan.take({"'", "feet", "foot", "ft.", "ft"}))
        return inchesAfterFeet(scan, *first);
    scan = afterNumber;
    return inchesOrBare(scan, *first, bareUnit);
}

/// `2-8`, `2-8 1/2`: feet and inches as doors are called out; nothing for any other form.
std::optional<Reading> doorNotation(const std::string& plain) {
    MeasureScanner scan(plain);
    const auto feet = scan.number();
    if (!feet || !feet->isWhole() || !takeDash(scan))
        return std::nullopt;
    const auto inches = scan.number();
    if (!inches || !inches->isWhole())
        return std::nullopt;
    if (inches->numerator > 11)
        return flawed(Flaw::wholeFoot);
    const Reading reading = withFraction(
        scan, times(*feet, nmPerFoot) + times(*inches, Length::nmPerInch));
    takeInchMark(scan);
    return scan.atEnd() ? reading : flawed(Flaw::unreadable);
}

Error sentenceFor(Flaw flaw, std::string_view text) {
    switch (flaw) {
    case Flaw::zeroDenominator:
        return badInput(inQuotes(text) + " divides by zero.");
    case Flaw::doubtfulComma:
        return badInput(inQuotes(text)
            + " may be a thousand or a decimal; write it without a comma, or with a point.");
    case Flaw::wholeFraction:
        return badInput(inQuotes(text) + " has a fraction of one inch or more.");
    case Flaw::wholeFoot:
        return badInput(inQuotes(text) + " has 12 or more inches after the feet.");
    default:
        return badInput(
            inQuotes(text) + " is not a length; write it as 35 1/2, 2'11-1/2 or 902mm.");
    }
}

Result<Length> checked(const Reading& reading, std::string_view text, LengthUnit bareUnit) {
    if (reading.flaw != Flaw::none)
        return sentenceFor(reading.flaw, text);
    if (reading.length > longestSensible)
        return badInput(inQuotes(text) + " is over "
            + (bareUnit == LengthUnit::millimetres ? "91 m" : "300 ft")
            + ", longer than anything in a house.");
    return reading.length;
}

Result<Length> readWhole(std::string_view text, const std::string& plain, LengthUnit bareUnit) {
    if (plain.empty())
        return badInput("A length is missing.");
    if (plain.front() == '-')
        return badInput(inQuotes(text) + " is negative; a length cannot be.");
    MeasureScanner scan(plain);
    const Reading reading = readMeasure(scan, bareUnit);
    scan.skipSpaces();
    if (reading.flaw == Flaw::none && !scan.atEnd())
        return sentenceFor(Flaw::unreadable, text);
    return checked(reading, text, bareUnit);
}

} // namespace

Result<Length> parseLength(std::string_view text, LengthUnit bareUnit) {
    return readWhole(text, plainMeasure(text), bareUnit);
}

Result<Length> parseDoorLength(std::string_view text, LengthUnit bareUnit) {
    const std::string plain = plainMeasure(text);
    if (const auto reading = doorNotation(plain))
        return checked(*reading, text, bareUnit);
    return readWhole(text, plain, bareUnit);
}

} // namespace miterbook
