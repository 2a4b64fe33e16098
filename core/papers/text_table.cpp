// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/text_table.h"

#include "papers/plain_text.h"
#include "papers/said_above.h"

#include <algorithm>
#include <numeric>

namespace miterbook {

namespace {

using Kind = PaperTable::Kind;

constexpr std::size_t gap = 2;
constexpr std::size_t narrowest = 6; ///< a column of words is not squeezed below this

std::size_t longestWord(std::string_view text) {
    std::size_t longest = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        longest = std::max(longest, textWidth(text.substr(0, end)));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return longest;
}

std::vector<std::size_t> naturalWidths(const PaperTable& table) {
    std::vector<std::size_t> widths;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const PaperColumn& column = table.columns[i];
        std::size_t width = column.align == PaperColumn::Align::left ? textWidth(column.title)
                                                                     : longestWord(column.title);
        for (const PaperTable::Row& row : table.rows) {
            if (row.kind != Kind::group && i < row.cells.size())
                width = std::max(width, textWidth(oneLine(row.cells[i].text)));
        }
        widths.push_back(width);
    }
    return widths;
}

/// Takes from the widest column of words until all fit. Numbers are never broken.
void squeeze(const PaperTable& table, std::vector<std::size_t>& widths, std::size_t width) {
    const std::size_t room = width - std::min(width, gap * (widths.size() - 1));
    while (std::accumulate(widths.begin(), widths.end(), std::size_t()) > room) {
        std::size_t widest = widths.size();
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const bool words = table.columns[i].align == PaperColumn::Align::left;
            if (words && widths[i] > narrowest
                && (widest == widths.size() || widths[i] > widths[widest]))
                widest = i;
        }
        if (widest == widths.size())
            return;
        --widths[widest];
    }
}

std::string padded(const std::string& text, std::size_t width, PaperColumn::Align align) {
    const std::size_t size = textWidth(text);
    if (size >= width)
        return text;
    const std::size_t before = align == PaperColumn::Align::right ? width - size
        : align == PaperColumn::Align::centre                     ? (width - size) / 2
                                                                  : 0;
    return std::string(before, ' ') + text + std::string(width - size - before, ' ');
}

void trimEnd(std::string& line) {
    line.erase(line.find_last_not_of(' ') + 1);
}

/// Sets cells side by side, each wrapped in its column.
void addLines(const std::vector<std::string>& texts, const PaperTable& table,
    const std::vector<std::size_t>& widths, std::vector<std::string>& lines) {
    std::vector<std::vector<std::string>> cells;
    std::size_t height = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        cells.push_back(wrapped(i < texts.size() ? texts[i] : std::string(), widths[i]));
        height = std::max(height, cells.back().size());
    }
    for (std::size_t at = 0; at < height; ++at) {
        std::string line;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const std::string& text = at < cells[i].size() ? cells[i][at] : std::string();
            line += (i == 0 ? "" : std::string(gap, ' '))
                + padded(text, widths[i], table.columns[i].align);
        }
        trimEnd(line);
        lines.push_back(std::move(line));
    }
}

std::string rule(const std::vector<std::size_t>& widths) {
    std::string line;
    for (const std::size_t width : widths)
        line += (line.empty() ? "" : std::string(gap, ' ')) + std::string(width, '-');
    return line;
}

std::vector<std::string> rowTexts(const PaperTable& table, std::size_t row) {
    std::vector<std::string> texts;
    const std::vector<Cell>& cells = table.rows[row].cells;
    for (std::size_t i = 0; i < std::min(cells.size(), table.columns.size()); ++i)
        texts.push_back(saidAbove(table, row, i) ? std::string() : cells[i].text);
    return texts;
}

} // namespace

std::vector<std::string> textTable(const PaperTable& table, std::size_t width) {
    std::vector<std::string> lines;
    if (table.columns.empty())
        return lines;
    std::vector<std::size_t> widths = naturalWidths(table);
    squeeze(table, widths, width);
    std::vector<std::string> titles;
    for (const PaperColumn& column : table.columns)
        titles.push_back(column.title);
    addLines(titles, table, widths, lines);
    lines.push_back(rule(widths));
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const PaperTable::Row& row = table.rows[i];
        const bool firstTotal = row.kind == Kind::total && i > 0
            && table.rows[i - 1].kind != Kind::total;
        if (firstTotal)
            lines.push_back(rule(widths));
        if (row.kind == Kind::group) {
            for (std::string& line : wrapped(row.cells.empty() ? "" : row.cells[0].text, width))
                lines.push_back(std::move(line));
        } else {
            addLines(rowTexts(table, i), table, widths, lines);
        }
    }
    return lines;
}

} // namespace miterbook
