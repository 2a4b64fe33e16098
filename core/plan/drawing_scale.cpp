// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/drawing_scale.h"

#include "basics/blank.h"
#include "basics/length_text.h"
#include "basics/quote.h"
#include "plan/outline.h"

#include <charconv>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

constexpr double leastScale = 0.5;
constexpr double mostScale = 5000;

Error noScale(std::string_view text) {
    return badInput(inQuotes(text) + " is no drawing scale; write it as 1/4\" = 1' or 1:50.");
}

Result<double> believed(double scale, std::string_view text) {
    if (!(scale >= leastScale && scale <= mostScale))
        return noScale(text);
    return scale;
}

std::optional<double> plainNumber(std::string_view text) {
    text = trimmed(text);
    double value = 0;
    const auto [end, failure] = std::from_chars(
        text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (failure != std::errc() || end != text.data() + text.size() || !(value > 0))
        return std::nullopt;
    return value;
}

} // namespace

Result<double> parseDrawingScale(std::string_view text) {
    const std::string_view whole = trimmed(text);
    if (const auto colon = whole.find(':'); colon != std::string_view::npos) {
        const auto paper = plainNumber(whole.substr(0, colon));
        const auto house = plainNumber(whole.substr(colon + 1));
        return paper && house ? believed(*house / *paper, text) : noScale(text);
    }
    const auto equals = whole.find('=');
    const auto paper = parseLength(trimmed(whole.substr(0, equals)), LengthUnit::inches);
    if (!paper || *paper <= Length())
        return noScale(text);
    Length house = Length::feet(1);
    if (equals != std::string_view::npos) {
        const auto said = parseLength(trimmed(whole.substr(equals + 1)), LengthUnit::inches);
        if (!said || *said <= Length())
            return noScale(text);
        house = *said;
    }
    return believed(house.toInches() / paper->toInches(), text);
}

Result<Underlay> scaledTo(Underlay underlay, PlanPoint a, PlanPoint b, Length known) {
    const Length now = distance(a, b);
    if (now <= Length() || known <= Length())
        return badInput("The scale needs two points apart and the length between them.");
    const double factor = known.toInches() / now.toInches();
    const double scale = underlay.scale.toInches() * factor;
    if (!(scale > 1e-5 && scale < 1200))
        return badInput("With that length the sheet would be too large or too small for a house.");
    underlay.scale = Length::fromInches(scale);
    underlay.x = a.x - Length::fromInches((a.x - underlay.x).toInches() * factor);
    underlay.y = a.y - Length::fromInches((a.y - underlay.y).toInches() * factor);
    return underlay;
}

Underlay turnedAbout(Underlay underlay, PlanPoint about, Angle by) {
    const double radians = by.toDegrees() * std::numbers::pi / 180.0;
    const double x = (underlay.x - about.x).toInches();
    const double y = (underlay.y - about.y).toInches();
    underlay.x = about.x + Length::fromInches(x * std::cos(radians) - y * std::sin(radians));
    underlay.y = about.y + Length::fromInches(x * std::sin(radians) + y * std::cos(radians));
    const auto turn = (underlay.turn.hundredths() + by.hundredths()) % 36'000;
    underlay.turn = Angle::hundredths(turn < 0 ? turn + 36'000 : turn);
    return underlay;
}

} // namespace miterbook
