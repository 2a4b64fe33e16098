// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

class QTableView;

namespace miterbook {

class FigureView;

/// Rows of a view's model that are selected, or the current one; in the order shown.
std::vector<std::size_t> chosenRows(const FigureView& view);
/// The model's row of the cursor; -1 for none.
int cursorRow(const FigureView& view);
/// Type to be read at arm's length beside the saw.
void setLargeType(FigureView& view);

} // namespace miterbook
