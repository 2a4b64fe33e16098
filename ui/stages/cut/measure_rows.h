// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/cut_piece.h"
#include "cut/measured_opening.h"
#include "widgets/column.h"

#include <optional>
#include <span>

namespace miterbook {

class CutDesk;

/// One opening in the table of measures.
struct MeasureRow {
    Measure measure;
    int number = 0; ///< in walking order on its level
    std::string name;
    Length planWidth;
    Length planHeight;
    std::optional<PieceState> state; ///< none: nothing is cut for it
    std::vector<MeasureRemark> remarks;

    bool operator==(const MeasureRow&) const = default;
};

/// The openings of the level in walking order.
std::vector<MeasureRow> measureRows(const CutDesk& cut);

/// In the order in which the tape goes: widths from the top, heights from the left, diagonals,
/// jamb.
std::span<const Column<MeasureRow>> measureColumns();

} // namespace miterbook
