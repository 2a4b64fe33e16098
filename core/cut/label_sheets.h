// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/bench.h"

#include <span>

namespace miterbook {

/// A sheet of labels as it is bought: how many, how large, where the first one lies.
struct LabelSheet {
    int columns = 1;
    int rows = 1;
    Length width;
    Length height;
    Length left;
    Length top;
    Length gap;        ///< between columns
    bool isA4 = false; ///< else Letter

    bool operator==(const LabelSheet&) const = default;
};

/// Sheets that are commonly sold, by their sizes; measure the first sheet all the same.
std::span<const LabelSheet> commonLabelSheets();

/// "30 a sheet, 2 5/8 x 1, Letter".
std::string labelSheetName(const LabelSheet& sheet);

bool printsOn(const Bench& bench, const LabelSheet& sheet);
Bench withLabelSheet(Bench bench, const LabelSheet& sheet);

} // namespace miterbook
