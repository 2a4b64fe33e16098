// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// A cell of a measure file that could not be read; its row is left out whole.
struct MeasureRejection {
    int line = 0;
    std::string opening; ///< as the row names it
    std::string reason;

    bool operator==(const MeasureRejection&) const = default;
};

/// What a file of measures says of a house's openings.
struct MeasureReading {
    std::vector<Measure> rows; ///< with the id of the measure they change, or none
    std::vector<MeasureRejection> rejected;
    std::vector<std::string> unmapped; ///< titles of columns that mean nothing to us

    /// "line 5, W4: ..."
    static std::string sentence(const MeasureRejection& rejection);
};

/// Reads measures as CSV (or copied from a spreadsheet): one row for each opening, a column
/// "opening" with its mark ("W4", "W4.2"), and columns such as "width top", "height left",
/// "diagonal up", "jamb", "note"; "width" and "height" alone stand for both ends. Our own measure
/// sheet's CSV is read too, with its title rows. Openings the file does not name keep what was read
/// before; an empty cell keeps the reading that is there. Errors: no CSV, or no column for opening
/// or sizes.
Result<MeasureReading> readMeasures(std::string_view bytes, const Book& book, Id<Plan> plan);

/// The edit that brings in a reading's rows: "Bring in 12 measures from main.csv".
Edit measuresEdit(const Book& book, IdSource& ids, Id<Plan> plan, const MeasureReading& reading,
    std::string_view fileName);

} // namespace miterbook
