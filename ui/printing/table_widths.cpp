// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/table_widths.h"

#include "printing/printable_text.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Of the table: a longer word is broken rather than crowd out the other columns.
constexpr double widestWordShare = 0.2;

double longestWord(const QString& text, TextRole role, const PaperFonts& fonts) {
    double longest = 0;
    for (const QString& word : text.split(QLatin1Char(' ')))
        longest = std::max(longest, fonts.width(role, word));
    return longest;
}

/// The widest word of a column, judged by its letters first: measuring every word takes too long.
double widestWord(const PaperTable& table, std::size_t column, const PaperFonts& fonts) {
    const TextRole role = roleOf(table.columns[column], PaperTable::Kind::plain);
    double widest = 0;
    qsizetype letters = 0;
    for (const PaperTable::Row& row : table.rows) {
        if (row.kind == PaperTable::Kind::group || column >= row.cells.size())
            continue;
        for (const QString& word : printable(row.cells[column].text).split(QLatin1Char(' '))) {
            if (word.size() + 1 < letters)
                continue;
            letters = std::max(letters, word.size());
            widest = std::max(widest, fonts.width(role, word));
        }
    }
    return widest;
}

double widestNumber(const PaperTable& table, std::size_t column, const PaperFonts& fonts) {
    double widest = 0;
    for (const PaperTable::Row& row : table.rows) {
        if (row.kind != PaperTable::Kind::group && column < row.cells.size())
            widest = std::max(widest,
                fonts.width(
                    roleOf(table.columns[column], row.kind), printable(row.cells[column].text)));
    }
    return widest;
}

/// What a column cannot do without: the longest word of its title, numbers whole, and words whole
/// unless they would take more than `most`.
double neededWidth(
    const PaperTable& table, std::size_t column, const PaperFonts& fonts, double most) {
    const PaperColumn& head = table.columns[column];
    const double title = longestWord(printable(head.title), TextRole::smallBold, fonts);
    if (head.align != PaperColumn::Align::left)
        return std::max(title, widestNumber(table, column, fonts));
    return std::max(title, std::min(widestWord(table, column, fonts), most));
}

/// Widths by weight, those below their need raised to it at the cost of the others.
std::vector<double> shareOf(
    double room, const std::vector<double>& weights, const std::vector<double>& needs) {
    std::vector<double> widths(weights.size(), 0.0);
    std::vector<bool> fixed(weights.size(), false);
    for (bool again = true; again;) {
        again = false;
        double left = room;
        double weight = 0;
        for (std::size_t i = 0; i < weights.size(); ++i) {
            left -= fixed[i] ? widths[i] : 0.0;
            weight += fixed[i] ? 0.0 : weights[i];
        }
        for (std::size_t i = 0; i < weights.size(); ++i) {
            if (fixed[i])
                continue;
            widths[i] = left * weights[i] / weight;
            if (widths[i] < needs[i]) {
                widths[i] = needs[i];
                fixed[i] = true;
                again = true;
            }
        }
    }
    return widths;
}

} // namespace

TextRole roleOf(const PaperColumn& column, PaperTable::Kind kind) {
    if (column.strong)
        return TextRole::heading;
    return kind == PaperTable::Kind::total ? TextRole::bold : TextRole::body;
}

std::vector<ColumnBox> columnBoxes(const PaperTable& table, const PaperFonts& fonts, double width) {
    std::vector<std::size_t> inLine;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (!table.columns[i].below)
            inLine.push_back(i);
    }
    if (inLine.empty())
        return {};
    const double gap = fonts.points(8);
    const double room = width - gap * static_cast<double>(inLine.size() - 1);
    std::vector<double> weights;
    std::vector<double> needs;
    double need = 0;
    for (const std::size_t i : inLine) {
        weights.push_back(std::max(table.columns[i].weight, 1));
        needs.push_back(neededWidth(table, i, fonts, room * widestWordShare));
        need += needs.back();
    }
    if (need > room)
        needs.assign(needs.size(), 0.0);
    const std::vector<double> widths = shareOf(room, weights, needs);
    std::vector<ColumnBox> boxes(table.columns.size());
    double left = 0;
    for (std::size_t i = 0; i < inLine.size(); ++i) {
        boxes[inLine[i]] = {left, widths[i]};
        left += widths[i] + gap;
    }
    return boxes;
}

} // namespace miterbook
