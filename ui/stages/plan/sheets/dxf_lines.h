// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QLineF>

#include <string>
#include <vector>

namespace miterbook {

/// The lines of a DXF: lines, polylines, arcs and circles as short lines, blocks where they are
/// inserted. Writing, hatching and solids are left out.
struct DxfLines {
    std::vector<QLineF> lines;
    int units = 0; ///< $INSUNITS
};

/// Errors, without the file's name: no DXF, nothing in it that can be drawn, more than `most`
/// lines.
Result<DxfLines> readDxfLines(const std::string& content, std::size_t most);

} // namespace miterbook
