// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "widgets/column.h"
#include "widgets/table_rows.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace miterbook {

/// Everything a TableModel needs to know of its rows. Only `name`, `columns` and `rows` are needed
/// for a table that is looked at; a table that is typed into also says how rows are made and kept.
template <class Row>
struct TableSpec {
    QString name; ///< "Windows": accessible name, and key of its widths
    std::span<const Column<Row>> columns;
    std::function<std::vector<Row>()> rows; ///< from the book, in the order to be shown
    /// What makes two rows the same one; default: the row's id, or its place where it has none.
    std::function<std::int64_t(const Row&)> key;
    /// The n-th new row (from 0) of one gesture, without id; null: rows are not typed in here.
    std::function<Row(int)> blank;
    /// Whether a row may be kept as it is; asked before store. Errors: one sentence.
    std::function<Result<void>(const Row&)> check;
    /// Puts a row as typed into the edit; default: under its id, or a new one.
    std::function<void(EditBuilder&, Row)> store;
    /// Takes a row away; default: by its id.
    std::function<void(EditBuilder&, const Row&)> remove;
    /// Makes a copy of a row differ where it must: another mark or name. n from 0.
    std::function<void(Row&, int)> copied;
    /// What the user calls a row in a sentence: "window W4"; default: its noun and name.
    std::function<std::string(const Row&)> title;
    std::function<RowMark(const Row&)> mark;
    /// Words beside a row's number at its head, such as how far the work is.
    std::function<QString(const Row&)> head;
    /// Rows are neither removed nor copied by the table's own gestures: more hangs on them.
    bool fixedRows = false;
    /// Shown where there are no rows yet: what to do first.
    QString emptyHint;
};

} // namespace miterbook
