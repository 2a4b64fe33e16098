// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/room_text.h"

#include "basics/blank.h"

#include <charconv>
#include <cmath>

namespace miterbook {

namespace {

constexpr std::string_view timesSign = "\xC3\x97"; // U+00D7

Error inWall(std::size_t number, const std::string& sentence) {
    return badInput("Wall " + std::to_string(number) + ": " + sentence);
}

/// Takes `words` off the end of `text` when they stand there.
bool takeEnding(std::string_view& text, std::string_view words) {
    if (!text.ends_with(words))
        return false;
    text = trimmed(text.substr(0, text.size() - words.size()));
    return true;
}

/// Takes `no base`, `no crown` and `no shoe` off the end, in any order.
void takeBareness(std::string_view& text, Wall& wall) {
    bool more = true;
    while (more) {
        more = false;
        if (takeEnding(text, "no base")) {
            wall.base = false;
            more = true;
        }
        if (takeEnding(text, "no crown")) {
            wall.crown = false;
            more = true;
        }
        if (takeEnding(text, "no shoe")) {
            wall.shoe = false;
            more = true;
        }
    }
}

/// Takes `@135` off the end: the angle at the far corner, in degrees.
Result<void> takeAngle(std::string_view& text, Wall& wall) {
    const auto at = text.find('@');
    if (at == std::string_view::npos)
        return {};
    const std::string_view digits = trimmed(text.substr(at + 1));
    double degrees = 0;
    const auto [end, failure] = std::from_chars(
        digits.data(), digits.data() + digits.size(), degrees, std::chars_format::fixed);
    if (failure != std::errc() || end != digits.data() + digits.size())
        return badInput("\"" + std::string(digits) + "\" is not an angle in degrees.");
    if (!(degrees > 0 && degrees < 180))
        return badInput("an angle between two walls lies between 0 and 180 degrees.");
    wall.angle = Angle::hundredths(std::llround(degrees * 100));
    text = trimmed(text.substr(0, at));
    return {};
}

/// Reads one wall into `wall`.
Result<void> parseWall(std::string_view text, std::size_t number, LengthUnit bareUnit, Wall& wall) {
    std::string_view rest = trimmed(text);
    takeBareness(rest, wall);
    if (const auto angle = takeAngle(rest, wall); !angle)
        return inWall(number, angle.error().sentence);
    if (rest.empty())
        return inWall(number, "its length is missing.");
    const Result<Length> length = parseLength(rest, bareUnit);
    if (!length)
        return inWall(number, length.error().sentence);
    if (*length <= Length())
        return inWall(number, "\"" + std::string(rest) + "\" is no length for a wall.");
    wall.length = *length;
    return {};
}

std::vector<Wall> rectangle(Length width, Length depth) {
    std::vector<Wall> walls(4);
    for (std::size_t i = 0; i < walls.size(); ++i)
        walls[i].length = i % 2 == 0 ? width : depth;
    return walls;
}

/// Where the sign between the two sides of a rectangle begins, and how long it is.
std::pair<std::size_t, std::size_t> findTimes(std::string_view text) {
    if (const auto at = text.find(timesSign); at != std::string_view::npos)
        return {at, timesSign.size()};
    return {text.find_first_of("xX"), 1};
}

Result<std::vector<Wall>> parseRectangle(
    std::string_view text, std::size_t at, std::size_t size, LengthUnit bareUnit) {
    Wall width;
    Wall depth;
    if (const auto read = parseWall(text.substr(0, at), 1, bareUnit, width); !read)
        return read.error();
    if (const auto read = parseWall(text.substr(at + size), 2, bareUnit, depth); !read)
        return read.error();
    return rectangle(width.length, depth.length);
}

Corner cornerOf(char mark) {
    return mark == '^' ? Corner::outside : mark == '|' ? Corner::open : Corner::inside;
}

Result<std::vector<Wall>> parseOutline(std::string_view text, bool open, LengthUnit bareUnit) {
    std::vector<Wall> walls;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const auto end = std::min(text.find_first_of(",^|", begin), text.size());
        Wall wall;
        const std::string_view part = text.substr(begin, end - begin);
        if (const auto read = parseWall(part, walls.size() + 1, bareUnit, wall); !read)
            return read.error();
        if (end < text.size())
            wall.corner = cornerOf(text[end]);
        walls.push_back(wall);
        begin = end + 1;
    }
    // One or two walls cannot come round to where they began.
    if (open || walls.size() < 3)
        walls.back().corner = Corner::open;
    return walls;
}

bool isPlain(const Wall& wall) {
    return wall.corner == Corner::inside && wall.angle == Angle::degrees(90) && wall.base
        && wall.crown && wall.shoe;
}

bool isRectangle(const std::vector<Wall>& walls) {
    if (walls.size() != 4 || walls[0].length != walls[2].length
        || walls[1].length != walls[3].length)
        return false;
    for (const Wall& wall : walls) {
        if (!isPlain(wall))
            return false;
    }
    return true;
}

std::string angleText(Angle angle) {
    const auto whole = angle.hundredths() / 100;
    const auto part = angle.hundredths() % 100;
    std::string text = " @" + std::to_string(whole);
    if (part != 0) {
        text += part < 10 ? ".0" : ".";
        text += std::to_string(part % 10 == 0 ? part / 10 : part);
    }
    return text;
}

std::string wallText(const Wall& wall, LengthStyle style) {
    std::string text = formatLength(wall.length, style);
    if (wall.angle != Angle::degrees(90))
        text += angleText(wall.angle);
    if (!wall.base)
        text += " no base";
    if (!wall.crown)
        text += " no crown";
    if (!wall.shoe)
        text += " no shoe";
    return text;
}

std::string_view separatorAfter(const Wall& wall, bool last) {
    if (last)
        return wall.corner == Corner::open ? " ." : "";
    return wall.corner == Corner::outside ? " ^ " : wall.corner == Corner::open ? " | " : ", ";
}

} // namespace

Result<std::vector<Wall>> parseWalls(std::string_view text, LengthUnit bareUnit) {
    std::string_view rest = trimmed(text);
    if (rest.empty())
        return std::vector<Wall>();
    const bool open = takeEnding(rest, ".");
    const auto [at, size] = findTimes(rest);
    if (!open && at < rest.size() && rest.find_first_of(",^|") == std::string_view::npos)
        return parseRectangle(rest, at, size, bareUnit);
    return parseOutline(rest, open, bareUnit);
}

std::string formatWalls(const std::vector<Wall>& walls, LengthStyle style) {
    if (isRectangle(walls))
        return formatLength(walls[0].length, style) + " x " + formatLength(walls[1].length, style);
    std::string text;
    for (std::size_t i = 0; i < walls.size(); ++i) {
        text += wallText(walls[i], style);
        text += separatorAfter(walls[i], i + 1 == walls.size());
    }
    return text;
}

Length perimeter(const std::vector<Wall>& walls) {
    Length sum;
    for (const Wall& wall : walls)
        sum += wall.length;
    return sum;
}

} // namespace miterbook
