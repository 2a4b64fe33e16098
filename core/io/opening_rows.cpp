// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/decoded_text.h"
#include "io/opening_words.h"
#include "io/schedule_rows.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

using enum ScheduleField;

constexpr int mostAlike = 500;
constexpr int mostUnits = 12;

void readSize(RowReader& reader, Opening& opening) {
    if (!reader.silent(size)) {
        if (const auto both = reader.size(size)) {
            opening.width = both->width;
            opening.height = both->height;
        }
        return;
    }
    if (const auto across = reader.doorLength(width))
        opening.width = *across;
    else if (reader.silent(width))
        reader.reject(reader.has(width) ? width : size, "A width is needed.");
    if (const auto up = reader.doorLength(height))
        opening.height = *up;
    else if (reader.silent(height) && (reader.has(height) || reader.has(width)))
        reader.reject(height, "A height is needed.");
}

void checkSize(RowReader& reader, const Opening& opening) {
    const ScheduleField from = reader.silent(size) ? width : size;
    if (reader.rejected())
        return;
    if (opening.width < Length::inches(4) || opening.height < Length::inches(4))
        reader.reject(from, "An opening under 4 in is no opening; are the numbers in feet?");
}

void readWall(RowReader& reader, Opening& opening) {
    if (const auto framed = framedWall(reader.text(wallThickness)))
        opening.wallThickness = *framed;
    else if (const auto thick = reader.length(wallThickness))
        opening.wallThickness = *thick;
    if (const auto deep = reader.length(frameDepth))
        opening.frameDepth = *deep;
}

void readPlace(RowReader& reader, Opening& opening) {
    if (const Level* level = reader.level())
        opening.level = level->id;
    if (const Room* room = reader.room(ScheduleField::room)) {
        opening.room = room->id;
        if (!opening.level)
            opening.level = room->level;
    }
    if (const Room* other = reader.room(otherRoom))
        opening.otherRoom = other->id;
}

void readStyle(RowReader& reader, Opening& opening) {
    if (reader.silent(style))
        return;
    const auto read = trimStyle(reader.text(style));
    const bool fits = read
        && (opening.isWindow() || *read == TrimStyle::threeSided || *read == TrimStyle::buttedHead);
    if (fits)
        opening.style = *read;
    else
        reader.reject(style,
            quotedCell(reader.text(style)) + " is no trim style for a "
                + (opening.isWindow() ? "window; say picture frame, stool and apron, three-sided, "
                                        "butted head or drywall return."
                                      : "door; say three-sided or butted head."));
}

int sidesCased(RowReader& reader, int otherwise) {
    const std::string text = foldedText(reader.text(sides));
    if (text == "both" || text == "both sides")
        return 2;
    if (text == "one" || text == "one side")
        return 1;
    if (text == "none")
        return 0;
    return reader.whole(sides, 0, 2, otherwise);
}

/// What both kinds of opening have.
Opening commonOpening(RowReader& reader) {
    Opening opening;
    opening.mark = singleLine(reader.text(mark));
    if (opening.mark.empty())
        reader.reject(mark, "A mark is needed.");
    opening.count = reader.whole(quantity, 1, mostAlike, 1);
    readSize(reader, opening);
    checkSize(reader, opening);
    readWall(reader, opening);
    readPlace(reader, opening);
    opening.casing = reader.profile(casing, ProfileUse::casing);
    opening.note = singleLine(reader.text(note));
    return opening;
}

void addToNote(Opening& opening, std::string_view text) {
    if (text.empty())
        return;
    opening.note += (opening.note.empty() ? "" : "; ") + singleLine(text);
}

/// A schedule tells an arched unit's height over all; ours runs to the spring line.
void shapeArch(RowReader& reader, Opening& opening, bool halfRound) {
    const auto said = reader.length(rise);
    if (!said && !halfRound) {
        reader.reject(rise, "An arched head needs its rise; half the width is a half round.");
        return;
    }
    opening.shape = Shape::arch;
    opening.rise = said ? *said : opening.width / 2;
    if (opening.rise * 2 > opening.width)
        reader.reject(rise, "The rise of an arch is at most half its width.");
    else if (opening.rise >= opening.height)
        reader.reject(height, "The height over all must be more than the rise of the arch.");
    opening.height -= opening.rise;
    reader.remark("the height is taken as over all, the arch included.");
}

/// A regular octagon as wide as it is high: side = width / (1 + sqrt 2), corners 135 degrees.
void shapeOctagon(RowReader& reader, Opening& opening) {
    if (opening.width != opening.height) {
        reader.reject(type, "An octagon that is not as wide as high must be drawn in the plan.");
        return;
    }
    PolygonSide side;
    side.length = Length::fromInches(opening.width.toInches() / (1 + std::numbers::sqrt2));
    side.angle = Angle::degrees(135);
    opening.shape = Shape::polygon;
    opening.sides.assign(8, side);
}

void readWindowShape(RowReader& reader, Opening& opening) {
    const WindowShape shape = windowShape(reader.text(type));
    if (reader.rejected())
        return;
    if (shape.kind == WindowShape::Kind::unknown)
        reader.reject(type,
            "The sides of a " + std::string(shape.word)
                + " window are not in a schedule; enter it in the plan.");
    else if (shape.kind == WindowShape::Kind::octagon)
        shapeOctagon(reader, opening);
    else if (shape.kind != WindowShape::Kind::rectangle || !reader.silent(rise))
        shapeArch(reader, opening, shape.kind == WindowShape::Kind::halfRound);
}

void readHardware(RowReader& reader, Opening& opening) {
    opening.deadbolt = reader.yes(deadbolt);
    opening.doorStop = reader.yes(doorStop);
    if (reader.silent(hardware))
        return;
    const std::string text = foldedText(reader.text(hardware));
    const auto lock = locksetOf(text);
    if (!lock)
        reader.reject(hardware,
            quotedCell(text)
                + " is no lockset; say passage, privacy, dummy, keyed "
                  "or none.");
    opening.lockset = lock.value_or(Lockset::none);
    opening.deadbolt = opening.deadbolt || text.find("deadbolt") != std::string::npos;
    opening.doorStop = opening.doorStop || text.find("stop") != std::string::npos;
}

void readHand(RowReader& reader, Opening& opening) {
    if (reader.silent(hand))
        return;
    const auto read = handOf(reader.text(hand));
    if (!read)
        reader.reject(hand, quotedCell(reader.text(hand)) + " is no hand; say left or right.");
    opening.hand = read.value_or(Hand::none);
}

} // namespace

ScheduleRow windowRow(RowReader& reader) {
    Opening opening = commonOpening(reader);
    opening.kind = OpeningKind::window;
    readStyle(reader, opening);
    opening.sidesCased = sidesCased(reader, 1);
    const int units = reader.whole(mulls, 1, mostUnits, mullsOf(reader.text(type)) + 1);
    opening.mulls = units - 1;
    if (units > 1)
        reader.remark("taken as " + std::to_string(units) + " units in one frame, "
            + formatLengthWithUnit(opening.width) + " wide over all.");
    readWindowShape(reader, opening);
    addToNote(opening, reader.text(type));
    if (!reader.silent(sill))
        addToNote(opening, "sill " + singleLine(reader.text(sill)));
    return {reader.line(), std::move(opening), {}, {}};
}

ScheduleRow doorRow(RowReader& reader) {
    Opening opening = commonOpening(reader);
    opening.kind = OpeningKind::prehungDoor;
    opening.style = TrimStyle::threeSided;
    if (!reader.silent(type)) {
        const auto kind = doorKind(reader.text(type));
        if (!kind)
            reader.reject(type,
                quotedCell(reader.text(type))
                    + " is no kind of door; say prehung, double, "
                      "bifold, bypass, pocket, exterior or cased opening.");
        opening.kind = kind.value_or(OpeningKind::prehungDoor);
    }
    readStyle(reader, opening);
    opening.sidesCased = sidesCased(reader, opening.kind == OpeningKind::exteriorDoor ? 1 : 2);
    readHand(reader, opening);
    readHardware(reader, opening);
    return {reader.line(), std::move(opening), {}, {}};
}

} // namespace miterbook
