// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/window_columns.h"

#include "stages/plan/polygon_text.h"
#include "widgets/profile_column.h"

namespace miterbook {

namespace {

LengthUnit unitOf(const Book& book) {
    return book.prices.shop().unit;
}

bool isArch(const Opening& opening) {
    return opening.shape == Shape::arch;
}

bool isPolygon(const Opening& opening) {
    return opening.shape == Shape::polygon;
}

bool hasStool(const Opening& opening) {
    return opening.style == TrimStyle::stoolAndApron || opening.style == TrimStyle::drywallReturn;
}

bool hasMulls(const Opening& opening) {
    return opening.mulls > 0;
}

constexpr Column<Opening> sidesColumn{.title = QT_TRANSLATE_NOOP("Column", "Sides of a polygon"),
    .read =
        [](const Opening& opening, const Book& book) {
            return text(formatSides(opening.sides, book.prices.shop().lengths()));
        },
    .edit =
        [](Opening& opening, const QString& typed, const Book& book) {
            return putInto<&Opening::sides>(opening, parseSides(utf8(typed), unitOf(book)));
        },
    .applies = isPolygon};

constexpr Column<Opening> windowList[] = {
    differenceColumn<Opening>(),
    textColumn<&Opening::mark>(QT_TRANSLATE_NOOP("Column", "Mark")),
    lengthColumn<&Opening::width>(QT_TRANSLATE_NOOP("Column", "Width")).editedBy(putWidthOrSize),
    lengthColumn<&Opening::height>(QT_TRANSLATE_NOOP("Column", "Height")),
    wholeColumn<&Opening::count, 1, 500>(QT_TRANSLATE_NOOP("Column", "Count")).sum(),
    roomColumn<&Opening::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    wordColumn<&Opening::style>(QT_TRANSLATE_NOOP("Column", "Trim style")),
    profileColumn<&Opening::casing, NoProfile::asPlan, ProfileUse::casing, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Casing")),
    profileColumn<&Opening::stool, NoProfile::asPlan, ProfileUse::stool, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Stool"))
        .when(hasStool),
    wholeColumn<&Opening::mulls, 0, 20, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "Mulls")),
    lengthColumn<&Opening::wallThickness>(QT_TRANSLATE_NOOP("Column", "Wall thickness")),
    lengthColumn<&Opening::frameDepth>(QT_TRANSLATE_NOOP("Column", "Jamb depth")),
    lengthColumn<&Opening::reveal>(QT_TRANSLATE_NOOP("Column", "Own reveal")),
    wordColumn<&Opening::shape>(QT_TRANSLATE_NOOP("Column", "Shape")),
    lengthColumn<&Opening::rise>(QT_TRANSLATE_NOOP("Column", "Arch rise")).when(isArch),
    sidesColumn,
    profileColumn<&Opening::mullCasing, NoProfile::asPlan, ProfileUse::casing, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Mull casing"))
        .when(hasMulls),
    wholeColumn<&Opening::sidesCased, 0, 2>(QT_TRANSLATE_NOOP("Column", "Sides cased")),
    wholeColumn<&Opening::wall, 0, 1000, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "In wall")),
    levelColumn<&Opening::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    textColumn<&Opening::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

Result<void> putWidthOrSize(Opening& opening, const QString& typed, const Book& book) {
    const std::string words = utf8(typed.trimmed());
    if (words.empty()) {
        opening.width = Length();
        return {};
    }
    const auto size = parseSize(words, unitOf(book));
    const auto width = opening.isWindow() ? parseLength(words, unitOf(book))
                                          : parseDoorLength(words, unitOf(book));
    // 3068 is a size where it would be an absurd length.
    const bool asSize = size && (!width || *width > Length::feet(40));
    if (!asSize)
        return putInto<&Opening::width>(opening, width);
    opening.width = size->width;
    opening.height = size->height;
    return {};
}

Result<void> putDoorHeight(Opening& opening, const QString& typed, const Book& book) {
    if (typed.trimmed().isEmpty()) {
        opening.height = Length();
        return {};
    }
    return putInto<&Opening::height>(opening, parseDoorLength(utf8(typed), unitOf(book)));
}

std::span<const Column<Opening>> windowColumns() {
    return windowList;
}

} // namespace miterbook
