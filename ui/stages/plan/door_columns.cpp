// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/door_columns.h"

#include "stages/plan/window_columns.h"
#include "widgets/profile_column.h"

namespace miterbook {

namespace {

bool isDoor(const Opening& opening) {
    return opening.isDoor();
}

bool hasLegsToSubfloor(const Opening& opening) {
    return opening.fromSubfloor;
}

/// Any kind but a window: that one has a table of its own.
constexpr Column<Opening> kindColumn{.title = QT_TRANSLATE_NOOP("Column", "Kind"),
    .kind = CellKind::choice,
    .read = [](const Opening& opening, const Book&) { return text(word(opening.kind)); },
    .edit
    = [](Opening& opening, const QString& typed,
          const Book&) { return putInto<&Opening::kind>(opening, chosenWord<OpeningKind>(typed)); },
    .choices =
        [](const Opening&, const Book&) {
            QStringList words = wordsOf<OpeningKind>();
            words.removeAll(text(word(OpeningKind::window)));
            return words;
        }};

constexpr Column<Opening> doorList[] = {
    differenceColumn<Opening>(),
    textColumn<&Opening::mark>(QT_TRANSLATE_NOOP("Column", "Mark")),
    kindColumn,
    lengthColumn<&Opening::width>(QT_TRANSLATE_NOOP("Column", "Width")).editedBy(putWidthOrSize),
    lengthColumn<&Opening::height>(QT_TRANSLATE_NOOP("Column", "Height")).editedBy(putDoorHeight),
    wholeColumn<&Opening::count, 1, 500>(QT_TRANSLATE_NOOP("Column", "Count")).sum(),
    roomColumn<&Opening::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    roomColumn<&Opening::otherRoom>(QT_TRANSLATE_NOOP("Column", "Other room")),
    wholeColumn<&Opening::sidesCased, 0, 2>(QT_TRANSLATE_NOOP("Column", "Sides cased")),
    wordColumn<&Opening::style>(QT_TRANSLATE_NOOP("Column", "Trim style")),
    profileColumn<&Opening::casing, NoProfile::asPlan, ProfileUse::casing, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Casing")),
    wordColumn<&Opening::hand>(QT_TRANSLATE_NOOP("Column", "Hand")).when(isDoor),
    wordColumn<&Opening::lockset>(QT_TRANSLATE_NOOP("Column", "Lockset")).when(isDoor),
    checkColumn<&Opening::deadbolt>(QT_TRANSLATE_NOOP("Column", "Deadbolt")).when(isDoor),
    checkColumn<&Opening::doorStop>(QT_TRANSLATE_NOOP("Column", "Door stop")).when(isDoor),
    lengthColumn<&Opening::wallThickness>(QT_TRANSLATE_NOOP("Column", "Wall thickness")),
    lengthColumn<&Opening::frameDepth>(QT_TRANSLATE_NOOP("Column", "Jamb depth")),
    checkColumn<&Opening::fromSubfloor>(QT_TRANSLATE_NOOP("Column", "Legs to subfloor")),
    lengthColumn<&Opening::flooring>(QT_TRANSLATE_NOOP("Column", "Later flooring"))
        .when(hasLegsToSubfloor),
    profileColumn<&Opening::cap, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Head cap")),
    lengthColumn<&Opening::reveal>(QT_TRANSLATE_NOOP("Column", "Own reveal")),
    wholeColumn<&Opening::wall, 0, 1000, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "In wall")),
    levelColumn<&Opening::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    textColumn<&Opening::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<Opening>> doorColumns() {
    return doorList;
}

} // namespace miterbook
