// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/paper.h"

namespace miterbook {

/// Whether a cell need not be printed again because its column is `once` and the plain row above
/// says the same in it and in every `once` column left of it.
inline bool saidAbove(const PaperTable& table, std::size_t row, std::size_t column) {
    if (row == 0 || !table.columns[column].once)
        return false;
    const PaperTable::Row& here = table.rows[row];
    const PaperTable::Row& above = table.rows[row - 1];
    if (here.kind != PaperTable::Kind::plain || above.kind != PaperTable::Kind::plain
        || here.cells.size() <= column || above.cells.size() <= column)
        return false;
    for (std::size_t i = 0; i <= column; ++i) {
        if (table.columns[i].once && here.cells[i] != above.cells[i])
            return false;
    }
    return true;
}

} // namespace miterbook
