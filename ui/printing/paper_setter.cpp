// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/paper_setter.h"

#include "printing/block_setter.h"
#include "printing/drawing_setter.h"
#include "printing/floor_setter.h"
#include "printing/heading_setter.h"
#include "printing/page_breaker.h"
#include "printing/printable_text.h"
#include "printing/table_setter.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Sets each kind of block.
struct BlockVisitor {
    const PaperFonts& fonts;
    QSizeF area;
    std::vector<Slab>& slabs;

    void operator()(const Paragraph& paragraph) const {
        setParagraph(paragraph, fonts, area.width(), slabs);
    }
    void operator()(const PaperTable& table) const {
        TableSetter(table, fonts, area.width(), area.height()).set(slabs);
    }
    void operator()(const Signatures& signatures) const {
        setSignatures(signatures, fonts, area.width(), slabs);
    }
    void operator()(const PaperBars& bars) const { setBars(bars, fonts, area.width(), slabs); }
    void operator()(const PaperFloor& floor) const { setFloor(floor, fonts, area, slabs); }
    void operator()(const PaperLabels& labels) const {
        setLabels(labels, fonts, area.height(), slabs);
    }
};

} // namespace

SetPaper::SetPaper(const Paper& paper, const PaperFonts& fonts, QSizeF area)
    : m_fonts(fonts)
    , m_area(area)
    , m_height(area.height() - fonts.lineHeight(TextRole::small) - fonts.points(10))
    , m_hasFooter(paper.type != Paper::Type::labels)
    , m_footer(printable(paper.footer))
    , m_slabs(slabs(paper))
    , m_pages(breakPages(m_slabs, m_height)) {
}

std::vector<Slab> SetPaper::slabs(const Paper& paper) const {
    std::vector<Slab> slabs;
    if (paper.type != Paper::Type::labels)
        setPaperHeading(paper, m_fonts, m_area.width(), slabs);
    for (const Block& block : paper.blocks)
        std::visit(BlockVisitor{m_fonts, {m_area.width(), m_height}, slabs}, block);
    return slabs;
}

QRectF SetPaper::roomBelow(int index) const {
    double top = 0;
    for (const PlacedBlock& placed : page(index))
        top = std::max(top, placed.top + placed.block->height + m_fonts.points(10));
    return {0, top, m_area.width(), std::max(m_height - top, 0.0)};
}

SetBlock SetPaper::footer(int index) const {
    SetBlock block;
    if (!m_hasFooter)
        return block;
    const double baseline = m_area.height() - m_fonts.lineHeight(TextRole::small)
        + m_fonts.ascent(TextRole::small);
    const QString number = QStringLiteral("Page %1 of %2").arg(index + 1).arg(pageCount());
    const double left = m_area.width() - m_fonts.width(TextRole::small, number);
    const QStringList lines = m_fonts.wrap(TextRole::small, m_footer, left - m_fonts.points(12));
    block.marks.emplace_back(TextMark{TextRole::small, {0, baseline}, lines.front()});
    block.marks.emplace_back(TextMark{TextRole::small, {left, baseline}, number});
    const double line = m_area.height() - m_fonts.lineHeight(TextRole::small) - m_fonts.points(2);
    block.marks.emplace_back(LineMark{{0, line}, {m_area.width(), line}, m_fonts.hairline()});
    block.height = m_area.height();
    return block;
}

} // namespace miterbook
