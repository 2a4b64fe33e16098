// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/row_names.h"
#include "stages/plan/variant_rows.h"
#include "widgets/cell_look.h"
#include "widgets/columns.h"

namespace miterbook {

// Columns that rows of a plan have in common: where they stand, and what a variant does to them.

/// "added", "changed" or "removed" by the elevation or option that is edited; shown only then.
template <Overlaid Row>
constexpr Column<Row> differenceColumn() {
    return {.title = QT_TRANSLATE_NOOP("Column", "Here"),
        .read = [](const Row& row, const Book&) { return wordOf(markOfRow(row)); },
        .whereFrom =
            [](const Row& row, const Book&) {
                return markOfRow(row) == RowMark::plain
                    ? QString()
                    : QCoreApplication::translate(
                        "Column", "What this elevation or option does to the base plan.");
            }};
}

/// A room by name; the row's level follows it.
template <auto M>
constexpr Column<RowOf<M>> roomColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::choice,
        .read =
            [](const Row& row, const Book& book) {
                return row.*M ? RoomNames(book, row.plan, row.variant).nameOf(row.*M) : QString();
            },
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            const auto room = RoomNames(book, row.plan, row.variant).find(typed);
            if (!room)
                return room.error();
            row.*M = *room;
            const Room* found = book.sheet(row.plan).template of<Room>().find(*room);
            if (found && row.room == *room)
                row.level = found->level;
            return {};
        },
        .choices
        = [](const Row& row,
              const Book& book) { return RoomNames(book, row.plan, row.variant).names(); }};
}

template <auto M>
constexpr Column<RowOf<M>> levelColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::choice,
        .read
        = [](const Row& row,
              const Book& book) { return LevelNames(book, row.plan, row.variant).nameOf(row.*M); },
        .edit =
            [](Row& row, const QString& typed, const Book& book) {
                return putInto<M>(row, LevelNames(book, row.plan, row.variant).find(typed));
            },
        .choices
        = [](const Row& row,
              const Book& book) { return LevelNames(book, row.plan, row.variant).names(); }};
}

} // namespace miterbook
