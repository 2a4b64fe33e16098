// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/paper_fonts.h"

namespace miterbook {

/// Where a column stands on the page.
struct ColumnBox {
    double left = 0;
    double width = 0;
};

/// What the cells of a column are set in.
TextRole roleOf(const PaperColumn& column, PaperTable::Kind kind);

/// The columns' boxes over a width: by their weights, but numbers and all but endless words are
/// given the room they need so that none is broken. Where not even that fits, by weight alone.
/// Columns that stand below their rows have none; nothing where no other is left.
std::vector<ColumnBox> columnBoxes(const PaperTable& table, const PaperFonts& fonts, double width);

} // namespace miterbook
