// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One record of a CSV file.
struct CsvRecord {
    int line = 1;                   ///< where it begins in the file, from 1
    std::vector<std::string> cells; ///< UTF-8, without blanks at either end

    /// The cell of a column, from 0; empty where the record is shorter.
    std::string_view cell(std::size_t column) const {
        return column < cells.size() ? std::string_view(cells[column]) : std::string_view();
    }
    bool operator==(const CsvRecord&) const = default;
};

/// A CSV file as text. Cells are text and nothing else: a formula stays its own letters.
struct CsvTable {
    char delimiter = ',';           ///< comma, semicolon or tab, whichever the file uses
    std::vector<CsvRecord> records; ///< lines with nothing in them are left out

    bool operator==(const CsvTable&) const = default;
};

/// Reads CSV as it is met: comma, semicolon or tab; quoted cells with line ends and doubled quotes;
/// CR, LF or both; any encoding of decodedText. Errors: one sentence for an empty file, one that is
/// no text, a quote that is never closed, more than 100 000 records, 500 columns or 10 000 bytes in
/// a cell.
Result<CsvTable> readCsv(std::string_view bytes);

} // namespace miterbook
