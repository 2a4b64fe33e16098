// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/room_columns.h"

#include "plan/outline.h"
#include "plan/room_text.h"
#include "widgets/profile_column.h"

namespace miterbook {

namespace {

constexpr Column<Level> levels[] = {
    differenceColumn<Level>(),
    textColumn<&Level::name>(QT_TRANSLATE_NOOP("Column", "Level")),
    lengthColumn<&Level::ceiling>(QT_TRANSLATE_NOOP("Column", "Ceiling height")),
    checkColumn<&Level::upper>(QT_TRANSLATE_NOOP("Column", "Trim is carried up")),
};

QString noRun() {
    return QStringLiteral("none");
}

/// A run of a room: the plan's profile, none, or one of its own; choice and profile in one cell.
template <auto choice, auto profile, ProfileUse... uses>
constexpr Column<Room> runColumn(const char* title) {
    return {.title = title,
        .kind = CellKind::choice,
        .read =
            [](const Room& room, const Book& book) {
                if (room.*choice == RunChoice::own)
                    return text(book.prices.profileName(room.*profile));
                return room.*choice == RunChoice::none ? noRun() : NoProfile::asPlan();
            },
        .edit = [](Room& room, const QString& typed, const Book& book) -> Result<void> {
            const QString word = typed.trimmed();
            if (word.compare(noRun(), Qt::CaseInsensitive) == 0) {
                room.*choice = RunChoice::none;
                room.*profile = {};
                return {};
            }
            const auto found = chosenProfile(book, word, NoProfile::asPlan());
            if (!found)
                return found.error();
            room.*profile = *found;
            room.*choice = *found ? RunChoice::own : RunChoice::plan;
            return {};
        },
        .choices =
            [](const Room&, const Book& book) {
                QStringList names = profileNames(book, {uses...}, NoProfile::asPlan());
                names.insert(1, noRun());
                return names;
            }};
}

/// Walls are typed with feet and inches whatever the shop's unit for pieces: rooms are.
LengthStyle wallStyle(const Book& book) {
    const LengthStyle style = book.prices.shop().lengths();
    return style.unit == LengthUnit::inches ? LengthStyle{LengthUnit::feetInches, style.denominator}
                                            : style;
}

constexpr Column<Room> wallsColumn{.title = QT_TRANSLATE_NOOP("Column", "Walls"),
    .read = [](const Room& room,
                const Book& book) { return text(formatWalls(room.walls, wallStyle(book))); },
    .edit = [](Room& room, const QString& typed, const Book& book) -> Result<void> {
        auto walls = parseWalls(utf8(typed), book.prices.shop().unit);
        return walls ? setWalls(room, std::move(walls).value()) : Result<void>(walls.error());
    }};

constexpr Column<Room> perimeterColumn{.title = QT_TRANSLATE_NOOP("Column", "Perimeter"),
    .kind = CellKind::run,
    .number = [](const Room& room) { return perimeter(room.walls).nm(); },
    .write =
        [](std::int64_t nm, const Book& book) {
            return nm == 0 ? QString()
                           : text(formatRun(Length::nanometres(nm), book.prices.shop().unit));
        },
    .whereFrom =
        [](const Room&, const Book&) {
            return QCoreApplication::translate("Column", "The sum of the room's walls.");
        },
    .summed = true};

constexpr Column<Room> rooms[] = {
    differenceColumn<Room>(),
    textColumn<&Room::mark>(QT_TRANSLATE_NOOP("Column", "Mark")),
    textColumn<&Room::name>(QT_TRANSLATE_NOOP("Column", "Room")),
    wallsColumn,
    perimeterColumn,
    levelColumn<&Room::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    wordColumn<&Room::use>(QT_TRANSLATE_NOOP("Column", "Use")),
    runColumn<&Room::baseChoice, &Room::base, ProfileUse::base, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Base")),
    runColumn<&Room::shoeChoice, &Room::shoe, ProfileUse::shoe>(
        QT_TRANSLATE_NOOP("Column", "Shoe")),
    runColumn<&Room::crownChoice, &Room::crown, ProfileUse::crown>(
        QT_TRANSLATE_NOOP("Column", "Crown")),
    profileColumn<&Room::chairRail, NoProfile::unsaid, ProfileUse::chairRail, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Chair rail")),
    lengthColumn<&Room::ceiling>(QT_TRANSLATE_NOOP("Column", "Own ceiling height")),
    lengthColumn<&Room::baseBreak>(QT_TRANSLATE_NOOP("Column", "Wall without base")),
    lengthColumn<&Room::extraBase>(QT_TRANSLATE_NOOP("Column", "Base without wall")),
    checkColumn<&Room::builtUpBase>(QT_TRANSLATE_NOOP("Column", "Built-up base")),
    textColumn<&Room::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<Level>> levelColumns() {
    return levels;
}

std::span<const Column<Room>> roomColumns() {
    return rooms;
}

} // namespace miterbook
