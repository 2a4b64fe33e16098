// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/bytes.h"
#include "papers/drawings.h"

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace miterbook {

/// A cell's text as printed, and the exact value for CSV and JSON where it is a number.
struct Cell {
    std::string text;
    std::string exact; ///< plain decimal ("35.5", "1234.50"); empty: the cell is text

    static Cell of(std::string text) { return {std::move(text), {}}; }
    bool operator==(const Cell&) const = default;
};

struct PaperColumn {
    enum class Align { left, right, centre };
    std::string title;
    Align align = Align::left;
    int weight = 10;   ///< share of the width, against the other columns'
    bool once = false; ///< a text like the one above it, with all `once` columns left of it alike,
                       ///< is not printed again until the next page; CSV and JSON always say it
    bool strong = false; ///< in larger type: what is read first
    bool below = false;  ///< on a page it stands under its row, over the whole width

    bool operator==(const PaperColumn&) const = default;
};

/// A table of a paper. Rows may be grouped: a row with `Kind::group` has one cell that spans the
/// table; `Kind::total` is set off and never stands alone at the head of a page.
struct PaperTable {
    enum class Kind { plain, group, total };
    struct Row {
        Kind kind = Kind::plain;
        std::vector<Cell> cells;

        bool operator==(const Row&) const = default;
    };
    std::string title;
    std::vector<PaperColumn> columns;
    std::vector<Row> rows;
    bool toFill = false; ///< rows are high enough to be written in by hand

    bool operator==(const PaperTable&) const = default;
};

/// Running text; each line is wrapped to the page.
struct Paragraph {
    enum class Style { body, heading, caution, list };
    Style style = Style::body;
    std::vector<std::string> lines;

    bool operator==(const Paragraph&) const = default;
};

/// Lines to sign on: who, under each line.
struct Signatures {
    std::vector<std::string> who;

    bool operator==(const Signatures&) const = default;
};

using Block = std::variant<Paragraph, PaperTable, Signatures, PaperBars, PaperLabels, PaperFloor>;

/// What a block says as a table; nothing for running text and lines to sign on.
std::optional<PaperTable> tableIn(const Block& block);

/// The shop's picture on a paper: by its sum, and what it looks like where the book has it.
struct PaperLogo {
    std::string sum; ///< SHA-256 in hexadecimal; empty: no picture
    Bytes content;   ///< PNG or JPEG

    bool operator==(const PaperLogo&) const = default;
};

/// A document as data: what it says, not how it looks. PaperPainter knows pages; paperText,
/// paperCsv and paperJson know the rest.
struct Paper {
    /// wall: large type, read from two paces. labels: sheets of labels, nothing else on them.
    enum class Type { office, wall, labels };
    std::string name;                                       ///< "bid", "takeoff", "order"
    std::string title;                                      ///< "Bid"
    std::vector<std::string> letterhead;                    ///< shop's name first, then lines
    std::vector<std::pair<std::string, std::string>> facts; ///< "Builder" -> "Alder Row Homes"
    std::vector<Block> blocks;
    std::vector<std::pair<std::string, Cell>> totals; ///< "price" -> 12 345.00
    std::string footer;
    Type type = Type::office;
    PaperLogo logo = {}; ///< set on office papers only

    bool operator==(const Paper&) const = default;
};

} // namespace miterbook
