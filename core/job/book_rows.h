// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"

namespace miterbook {

// Where a book keeps the rows of a kind, whatever the kind.

/// Whether rows of a kind hang below a plan and are read when it is opened.
bool isBelowPlan(std::size_t kind);

/// The rows of a kind below one plan; the kind must be one of these.
const RowMap& rowMap(const SheetRows& rows, std::size_t kind);
RowMap& rowMap(SheetRows& rows, std::size_t kind);

/// The rows of a kind that does not hang below plans; of time entries those that have been read.
const RowMap& rowMap(const Book& book, std::size_t kind);
/// The same, but of time entries, whose sums follow them, see TimeBook::change().
RowMap& rowMap(Book& book, std::size_t kind);

/// The row of a kind and id, wherever the book keeps it; nothing when it is not in memory.
std::optional<AnyRow> findAnyRow(const Book& book, std::size_t kind, std::int64_t id);

/// The book's row of the same kind, id and plan; nothing when it is not in memory.
std::optional<AnyRow> findSame(const Book& book, const AnyRow& row);

} // namespace miterbook
