// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/table_model_base.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// All rows of a table as CSV: titles as they stand above the columns, then cells as they would be
/// typed. bringTableCsv() takes it in again.
std::string tableCsv(const TableModelBase& model);

/// What a CSV file has done to a table.
struct BroughtIn {
    int added = 0;
    int changed = 0;
    int same = 0;              ///< were so already
    QStringList notUnderstood; ///< titles of columns that were left out
};

/// Writes the rows of a CSV file into a table, as one gesture and whole or not at all. A row of the
/// file is that of the table with the same text in the first column that is typed; where several
/// have it, the one that is most like it. Other rows are added, none is removed. Nothing when it
/// was refused, and the desk has said why: no CSV, no column for that text, a column in another
/// unit than the book's, two lines for one row, a cell that cannot be read, each with its line.
std::optional<BroughtIn> bringTableCsv(TableModelBase& model, std::string_view bytes);

} // namespace miterbook
