// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/table_setter.h"

#include "papers/said_above.h"
#include "printing/block_setter.h"
#include "printing/printable_text.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Of a page, so that a row of any length can be set: longer ones are cut into several slabs.
constexpr double highestRow = 0.4;

TextRole largestOf(const PaperTable& table) {
    return std::ranges::any_of(table.columns, &PaperColumn::strong) ? TextRole::heading
                                                                    : TextRole::body;
}

} // namespace

TableSetter::TableSetter(
    const PaperTable& table, const PaperFonts& fonts, double width, double pageHeight)
    : m_table(table)
    , m_fonts(fonts)
    , m_width(width)
    , m_pageHeight(pageHeight)
    , m_padding(fonts.points(table.toFill ? 7 : 1.6))
    , m_largest(largestOf(table))
    , m_boxes(columnBoxes(table, fonts, width))
    , m_headsAgain(headsAgain()) {
}

void TableSetter::set(std::vector<Slab>& slabs) {
    if (m_boxes.empty())
        return;
    setTitle(slabs);
    Slab heads;
    setHeads(heads.block);
    heads.before = m_table.title.empty() ? m_fonts.points(12) : m_fonts.points(3);
    heads.keepWithNext = !m_table.rows.empty();
    slabs.push_back(std::move(heads));
    for (std::size_t row = 0; row < m_table.rows.size(); ++row) {
        if (m_table.rows[row].kind == Kind::group)
            setGroup(row, slabs);
        else
            setRow(row, slabs);
    }
}

void TableSetter::setTitle(std::vector<Slab>& slabs) const {
    if (!m_table.title.empty())
        setHeading(printable(m_table.title), m_fonts, m_width, slabs);
}

void TableSetter::setHeads(SetBlock& block) const {
    std::vector<QStringList> titles;
    qsizetype lines = 1;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        const PaperColumn& column = m_table.columns[i];
        titles.push_back(column.below
                ? QStringList()
                : m_fonts.wrap(TextRole::smallBold, printable(column.title), m_boxes[i].width));
        lines = std::max(lines, titles.back().size());
    }
    const double lineHeight = m_fonts.lineHeight(TextRole::smallBold);
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        double top = block.height + static_cast<double>(lines - titles[i].size()) * lineHeight;
        for (const QString& line : titles[i]) {
            setCell(block, line, TextRole::smallBold, i, top + m_fonts.ascent(TextRole::smallBold));
            top += lineHeight;
        }
    }
    block.height += static_cast<double>(lines) * lineHeight + m_fonts.points(2);
    block.marks.emplace_back(
        LineMark{{0, block.height}, {m_width, block.height}, m_fonts.points(0.8)});
    block.height += m_fonts.points(1);
}

std::shared_ptr<const SetBlock> TableSetter::headsAgain() const {
    auto block = std::make_shared<SetBlock>();
    if (!m_table.title.empty()) {
        const QString title = printable(m_table.title) + QStringLiteral(", continued");
        for (const QString& line : m_fonts.wrap(TextRole::small, title, m_width))
            setLine(*block, TextRole::small, 0, line, m_fonts);
        block->height += m_fonts.points(4);
    }
    setHeads(*block);
    return block;
}

void TableSetter::setGroup(std::size_t row, std::vector<Slab>& slabs) const {
    const std::vector<Cell>& cells = m_table.rows[row].cells;
    const QString text = cells.empty() ? QString() : printable(cells.front().text);
    Slab slab;
    slab.head = m_headsAgain;
    slab.before = row == 0 ? 0.0 : m_fonts.points(5);
    slab.keepWithNext = keptWithNext(row);
    slab.block.height = m_padding;
    for (const QString& line : m_fonts.wrap(TextRole::bold, text, m_width))
        setLine(slab.block, TextRole::bold, 0, line, m_fonts);
    slab.block.height += m_padding;
    slabs.push_back(std::move(slab));
}

void TableSetter::setRow(std::size_t row, std::vector<Slab>& slabs) const {
    const RowText text = rowText(row, false);
    const auto most = static_cast<qsizetype>(
        m_pageHeight * highestRow / m_fonts.lineHeight(m_largest));
    const qsizetype step = std::max<qsizetype>(most, 1);
    bool once = false;
    for (std::size_t i = 0; i < m_boxes.size(); ++i)
        once = once || saidAbove(m_table, row, i);
    for (qsizetype from = 0; from < text.all(); from += step) {
        const qsizetype to = std::min(from + step, text.all());
        Slab slab;
        slab.block = rowBlock(row, text, from, to);
        slab.head = m_headsAgain;
        slab.keepWithNext = to == text.all() && keptWithNext(row);
        if (once && from == 0) {
            const RowText whole = rowText(row, true);
            slab.atTop = std::make_shared<SetBlock>(
                rowBlock(row, whole, 0, to == text.all() ? whole.all() : to));
        }
        slabs.push_back(std::move(slab));
    }
}

TableSetter::RowText TableSetter::rowText(std::size_t row, bool atTop) const {
    const std::vector<Cell>& cells = m_table.rows[row].cells;
    RowText text;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        const bool empty = i >= cells.size() || m_table.columns[i].below
            || (!atTop && saidAbove(m_table, row, i));
        text.cells.push_back(empty
                ? QStringList()
                : m_fonts.wrap(roleOf(m_table.columns[i], m_table.rows[row].kind),
                    printable(cells[i].text), m_boxes[i].width));
        text.lines = std::max(text.lines, text.cells.back().size());
    }
    text.below = belowText(row);
    return text;
}

/// What stands under a row: the titles of its columns and what they say, in running text.
QStringList TableSetter::belowText(std::size_t row) const {
    const std::vector<Cell>& cells = m_table.rows[row].cells;
    QStringList parts;
    for (std::size_t i = 0; i < std::min(m_boxes.size(), cells.size()); ++i) {
        const PaperColumn& column = m_table.columns[i];
        if (column.below && !cells[i].text.empty())
            parts << printable(column.title + ": " + cells[i].text);
    }
    if (parts.isEmpty())
        return {};
    return m_fonts.wrap(
        TextRole::body, parts.join(QStringLiteral("  \u00b7  ")), m_width - belowStart());
}

/// Under the second column, so that the first is found at a glance.
double TableSetter::belowStart() const {
    for (std::size_t i = 1; i < m_boxes.size(); ++i) {
        if (!m_table.columns[i].below)
            return m_boxes[i].left;
    }
    return 0;
}

SetBlock TableSetter::rowBlock(
    std::size_t row, const RowText& text, qsizetype from, qsizetype to) const {
    const bool total = isTotal(row);
    SetBlock block;
    if (total && (row == 0 || !isTotal(row - 1)))
        block.marks.emplace_back(LineMark{{0, 0}, {m_width, 0}, m_fonts.points(0.8)});
    block.height = m_padding;
    for (qsizetype line = from; line < std::min(to, text.lines); ++line) {
        for (std::size_t i = 0; i < text.cells.size(); ++i) {
            if (line < text.cells[i].size())
                setCell(block, text.cells[i][line],
                    roleOf(m_table.columns[i], m_table.rows[row].kind), i,
                    block.height + m_fonts.ascent(m_largest));
        }
        block.height += m_fonts.lineHeight(m_largest);
    }
    for (qsizetype line = std::max(from, text.lines); line < to; ++line)
        setLine(block, TextRole::body, belowStart(), text.below[line - text.lines], m_fonts);
    block.height += m_padding;
    if (!total && to >= text.all())
        block.marks.emplace_back(
            LineMark{{ruleStart(row), block.height}, {m_width, block.height}, m_fonts.hairline()});
    return block;
}

void TableSetter::setCell(SetBlock& block, const QString& text, TextRole role, std::size_t column,
    double baseline) const {
    if (text.isEmpty())
        return;
    const ColumnBox& box = m_boxes[column];
    double left = box.left;
    if (m_table.columns[column].align != PaperColumn::Align::left) {
        const double spare = box.width - m_fonts.width(role, text);
        const bool right = m_table.columns[column].align == PaperColumn::Align::right;
        left += right ? spare : spare / 2;
    }
    block.marks.emplace_back(TextMark{role, {left, baseline}, text});
}

/// The line under a row leaves out what the next row does not say again.
double TableSetter::ruleStart(std::size_t row) const {
    std::size_t column = 0;
    while (row + 1 < m_table.rows.size() && column + 1 < m_boxes.size()
        && saidAbove(m_table, row + 1, column))
        ++column;
    return m_boxes[column].left;
}

bool TableSetter::isTotal(std::size_t row) const {
    return row < m_table.rows.size() && m_table.rows[row].kind == Kind::total;
}

bool TableSetter::keptWithNext(std::size_t row) const {
    if (row + 1 >= m_table.rows.size())
        return false;
    const bool isGroup = m_table.rows[row].kind == Kind::group;
    const bool isLastButOne = row + 2 == m_table.rows.size();
    return row == 0 || isGroup || isLastButOne || isTotal(row + 1) || isTotal(row + 2);
}

} // namespace miterbook
