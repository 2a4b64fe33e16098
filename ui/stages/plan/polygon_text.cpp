// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/polygon_text.h"

#include "basics/blank.h"
#include "basics/number_text.h"

namespace miterbook {

namespace {

Result<PolygonSide> parseSide(std::string_view text, LengthUnit bareUnit) {
    PolygonSide side;
    const auto at = text.find('@');
    const auto length = parseLength(text.substr(0, at), bareUnit);
    if (!length)
        return length.error();
    side.length = *length;
    if (at == std::string_view::npos)
        return side;
    const auto degrees = parseQuantity(text.substr(at + 1));
    if (!degrees)
        return degrees.error();
    side.angle = Angle::hundredths(degrees->thousandths() / 10);
    return side;
}

} // namespace

Result<std::vector<PolygonSide>> parseSides(std::string_view text, LengthUnit bareUnit) {
    std::vector<PolygonSide> sides;
    if (isBlank(text))
        return sides;
    while (true) {
        const auto comma = text.find(',');
        const auto side = parseSide(text.substr(0, comma), bareUnit);
        if (!side)
            return badInput(
                "Side " + std::to_string(sides.size() + 1) + ": " + side.error().sentence);
        sides.push_back(*side);
        if (comma == std::string_view::npos)
            return sides;
        text.remove_prefix(comma + 1);
    }
}

std::string formatSides(const std::vector<PolygonSide>& sides, LengthStyle style) {
    std::string text;
    for (const PolygonSide& side : sides) {
        text += (text.empty() ? "" : ", ") + formatLength(side.length, style);
        if (side.angle != Angle::degrees(90))
            text += " @" + formatQuantity(Quantity::thousandths(side.angle.hundredths() * 10), 2);
    }
    return text;
}

} // namespace miterbook
