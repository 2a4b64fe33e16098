// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace miterbook {

struct PaperTable;

/// Bars drawn to one scale, one below the other: sticks and what is cut from them.
struct PaperBars {
    struct Part {
        double length = 0; ///< in the unit of Bar::length
        std::string text;  ///< what is written in it
        std::string of;    ///< whose it is: after the text where there is room, else below the bar
        bool slantLeft = false; ///< the end is mitered
        bool slantRight = false;
        bool crossed = false; ///< drawn crossed out: not to be had

        bool operator==(const Part&) const = default;
    };
    struct Bar {
        std::string title; ///< above the bar
        double length = 0;
        std::vector<Part> parts; ///< from the left; what they leave stays open
        std::string left;        ///< what is left, written at the end

        bool operator==(const Bar&) const = default;
    };
    std::string title;
    std::vector<Bar> bars;

    bool operator==(const PaperBars&) const = default;
};

/// Labels on bought sheets: sizes in points of the sheet, from its upper left corner.
struct PaperLabels {
    struct Label {
        std::string first;              ///< large: what the piece is
        std::vector<std::string> lines; ///< below it
        bool arrow = false;             ///< an arrow that points up

        bool operator==(const Label&) const = default;
    };
    int columns = 3;
    int rows = 10;
    double width = 189;
    double height = 72;
    double left = 13.5;
    double top = 36;
    double gap = 9; ///< between columns
    std::vector<Label> labels;

    bool operator==(const PaperLabels&) const = default;
};

/// A floor drawn to scale, or to fit where no usual scale does. Places are inches of the house, x
/// to the right and y down, from the upper left corner of what is drawn.
struct PaperFloor {
    struct Line {
        double x1 = 0;
        double y1 = 0;
        double x2 = 0;
        double y2 = 0;
        double weight = 0.5; ///< points

        bool operator==(const Line&) const = default;
    };
    struct Label {
        double x = 0;
        double y = 0;
        std::string text;
        bool bold = false;

        bool operator==(const Label&) const = default;
    };
    struct Entry {
        std::string what; ///< "W4", "Great room"
        std::string size;
        std::string where;

        bool operator==(const Entry&) const = default;
    };
    std::string title;
    bool metric = false; ///< the scale is said as 1:50, not as 1/4" = 1'
    double width = 0;
    double height = 0;
    std::vector<Line> lines;
    std::vector<Label> labels;
    std::vector<Entry> entries; ///< what is on it, for text, CSV and JSON

    bool operator==(const PaperFloor&) const = default;
};

/// The same as a table, for text, CSV and JSON.
PaperTable asTable(const PaperBars& bars);
PaperTable asTable(const PaperLabels& labels);
PaperTable asTable(const PaperFloor& floor);

} // namespace miterbook
