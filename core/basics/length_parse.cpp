// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"
#include "basics/length_text.h"

namespace miterbook {

namespace {

constexpr std::int64_t nmPerFoot = 12 * Length::nmPerInch;
constexpr std::int64_t nmPerMillimetre = 1'000'000;

Error notALength(std::string_view text) {
    return badInput("\"" + std::string(text) + "\" is not a length; write it as 35 1/2, 2'11-1/2 or 902mm.");
}

Length times(Ratio ratio, std::int64_t unit) {
    return Length::nanometres(roundedQuotient(Wide(ratio.numerator) * unit, ratio.denominator));
}

/// What a measure says, or why it cannot be read.
struct Reading {
    enum class Fault { none, unreadable, zeroDenominator, improper };
    Length length;
    Fault fault = Fault::none;
};

Reading failed(Reading::Fault fault) {
    return {{}, fault};
}

/// After a whole number of inches, " 1/2" or "-1/2"; adds it to the reading.
Reading withFraction(MeasureScanner& scan, Length whole) {
    const MeasureScanner before = scan;
    scan.skipSpaces();
    scan.take({"-"});
    scan.skipSpaces();
    const auto fraction = scan.number();
    if (!fraction) {
        scan = before;
        return {whole};
    }
    if (!fraction->isFraction)
        return failed(Reading::Fault::unreadable);
    if (fraction->denominator == 0)
        return failed(Reading::Fault::zeroDenominator);
    if (fraction->numerator >= fraction->denominator)
        return failed(Reading::Fault::improper);
    return {whole + times(*fraction, Length::nmPerInch)};
}

/// The inches after feet: nothing, "11", "11 1/2", "1/2", each with or without its mark.
Reading inchesAfterFeet(MeasureScanner& scan, Length feet) {
    scan.skipSpaces();
    scan.take({"-"});
    scan.skipSpaces();
    if (scan.atEnd())
        return {feet};
    const auto number = scan.number();
    if (!number)
        return failed(Reading::Fault::unreadable);
    if (number->denominator == 0)
        return failed(Reading::Fault::zeroDenominator);
    const Length inches = times(*number, Length::nmPerInch);
    if (inches >= Length::feet(1))
        return failed(Reading::Fault::improper);
    Reading reading = number->isFraction || number->denominator != 1
        ? Reading{feet + inches}
        : withFraction(scan, feet + inches);
    scan.skipSpaces();
    scan.take({"\"", "inches", "inch", "in"});
    return reading;
}

Reading readMeasure(MeasureScanner& scan, LengthUnit bareUnit) {
    const auto first = scan.number();
    if (!first)
        return failed(Reading::Fault::unreadable);
    if (first->denominator == 0)
        return failed(Reading::Fault::zeroDenominator);
    const MeasureScanner afterNumber = scan;
    scan.skipSpaces();
    if (scan.take({"mm"}))
        return {times(*first, nmPerMillimetre)};
    if (scan.take({"cm"}))
        return {times(*first, 10 * nmPerMillimetre)};
    if (scan.take({"m"}))
        return {times(*first, 1000 * nmPerMillimetre)};
    if (scan.take({"'", "feet", "foot", "ft"}))
        return inchesAfterFeet(scan, times(*first, nmPerFoot));
    scan = afterNumber;
    Reading reading{times(*first, Length::nmPerInch)};
    bool fraction = first->isFraction;
    if (!first->isFraction && first->denominator == 1) {
        const std::size_t before = scan.rest().size();
        reading = withFraction(scan, reading.length);
        fraction = scan.rest().size() != before;
    }
    scan.skipSpaces();
    const bool marked = scan.take({"\"", "inches", "inch", "in"});
    if (!marked && !fraction && bareUnit == LengthUnit::millimetres)
        reading.length = times(*first, nmPerMillimetre);
    return reading;
}

Error sentenceFor(Reading::Fault fault, std::string_view text) {
    switch (fault) {
    case Reading::Fault::zeroDenominator:
        return badInput("\"" + std::string(text) + "\" divides by zero.");
    case Reading::Fault::improper:
        return badInput("\"" + std::string(text) + "\" has inches or a fraction larger than a whole.");
    default:
        return notALength(text);
    }
}

Result<Length> readWhole(std::string_view text, const std::string& plain, LengthUnit bareUnit) {
    if (plain.empty())
        return badInput("A length is missing.");
    if (plain.front() == '-')
        return badInput("\"" + std::string(text) + "\" is negative; a length cannot be.");
    MeasureScanner scan(plain);
    const Reading reading = readMeasure(scan, bareUnit);
    if (reading.fault != Reading::Fault::none)
        return sentenceFor(reading.fault, text);
    scan.skipSpaces();
    if (!scan.atEnd())
        return notALength(text);
    if (reading.length > longestSensible)
        return badInput("\"" + std::string(text) + "\" is over 300 ft, longer than anything in a house.");
    return reading.length;
}

/// `2-8`, `2-8 1/2`: feet and inches as doors are called out.
std::optional<Length> doorNotation(const std::string& plain) {
    MeasureScanner scan(plain);
    const auto feet = scan.number();
    if (!feet || feet->isFraction || feet->denominator != 1 || !scan.take({"-"}))
        return std::nullopt;
    const auto inches = scan.number();
    if (!inches || inches->isFraction || inches->denominator != 1 || inches->numerator > 11)
        return std::nullopt;
    const Reading reading = withFraction(
        scan, times(*feet, nmPerFoot) + times(*inches, Length::nmPerInch));
    scan.take({"\""});
    if (reading.fault != Reading::Fault::none || !scan.atEnd())
        return std::nullopt;
    return reading.length;
}

} // namespace

Result<Length> parseLength(std::string_view text, LengthUnit bareUnit) {
    return readWhole(text, plainMeasure(text), bareUnit);
}

Result<Length> parseDoorLength(std::string_view text, LengthUnit bareUnit) {
    const std::string plain = plainMeasure(text);
    if (const auto length = doorNotation(plain))
        return *length;
    return readWhole(text, plain, bareUnit);
}

} // namespace miterbook
