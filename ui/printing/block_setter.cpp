// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/block_setter.h"

#include "printing/printable_text.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The lines of one text, each a slab; the first two and the last two are kept together.
std::vector<Slab> textSlabs(
    const QStringList& lines, TextRole role, double left, const PaperFonts& fonts) {
    std::vector<Slab> slabs;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        Slab slab;
        setLine(slab.block, role, left, lines[i], fonts);
        slab.keepWithNext = (i == 0 || i + 2 == lines.size()) && i + 1 < lines.size();
        slabs.push_back(std::move(slab));
    }
    return slabs;
}

void append(std::vector<Slab>& slabs, std::vector<Slab>&& more) {
    std::ranges::move(more, std::back_inserter(slabs));
}

void setBody(
    const Paragraph& paragraph, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    const bool isList = paragraph.style == Paragraph::Style::list;
    const double indent = isList ? fonts.points(10) : 0.0;
    for (const std::string& line : paragraph.lines) {
        const QStringList lines = fonts.wrap(TextRole::body, printable(line), width - indent);
        std::vector<Slab> text = textSlabs(lines, TextRole::body, indent, fonts);
        text.front().before = fonts.points(2);
        if (isList)
            text.front().block.marks.emplace_back(TextMark{
                TextRole::body, {0, fonts.ascent(TextRole::body)}, QString(QChar(0x2013))});
        append(slabs, std::move(text));
    }
}

/// Sides of a box round a slab, and its top or bottom.
void frame(SetBlock& block, bool top, bool bottom, const PaperFonts& fonts, double width) {
    const double thickness = fonts.points(0.8);
    const double padding = fonts.points(5);
    if (top) {
        for (Mark& mark : block.marks) {
            if (auto* text = std::get_if<TextMark>(&mark))
                text->at.ry() += padding;
        }
        block.height += padding;
    }
    block.height += bottom ? padding : 0.0;
    const QPointF right(width, 0);
    const QPointF down(0, block.height);
    block.marks.emplace_back(LineMark{{0, 0}, down, thickness});
    block.marks.emplace_back(LineMark{right, right + down, thickness});
    if (top)
        block.marks.emplace_back(LineMark{{0, 0}, right, thickness});
    if (bottom)
        block.marks.emplace_back(LineMark{down, right + down, thickness});
}

/// The first line is what to heed; all are kept on one page where they fit.
void setCaution(
    const Paragraph& paragraph, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    const double indent = fonts.points(8);
    std::vector<Slab> box;
    for (std::size_t i = 0; i < paragraph.lines.size(); ++i) {
        const TextRole role = i == 0 ? TextRole::bold : TextRole::body;
        const QStringList lines = fonts.wrap(
            role, printable(paragraph.lines[i]), width - 2 * indent);
        append(box, textSlabs(lines, role, indent, fonts));
    }
    for (std::size_t i = 0; i < box.size(); ++i) {
        frame(box[i].block, i == 0, i + 1 == box.size(), fonts, width);
        box[i].keepWithNext = i + 1 < box.size();
    }
    if (!box.empty())
        box.front().before = fonts.points(10);
    append(slabs, std::move(box));
}

} // namespace

void setLine(
    SetBlock& block, TextRole role, double left, const QString& text, const PaperFonts& fonts) {
    block.marks.emplace_back(TextMark{role, {left, block.height + fonts.ascent(role)}, text});
    block.height += fonts.lineHeight(role);
}

void setHeading(
    const QString& text, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    Slab slab;
    slab.before = fonts.points(14);
    slab.keepWithNext = true;
    for (const QString& line : fonts.wrap(TextRole::heading, text, width))
        setLine(slab.block, TextRole::heading, 0, line, fonts);
    slabs.push_back(std::move(slab));
}

void setParagraph(
    const Paragraph& paragraph, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    switch (paragraph.style) {
    case Paragraph::Style::heading:
        for (const std::string& line : paragraph.lines)
            setHeading(printable(line), fonts, width, slabs);
        break;
    case Paragraph::Style::caution:
        setCaution(paragraph, fonts, width, slabs);
        break;
    case Paragraph::Style::body:
    case Paragraph::Style::list:
        setBody(paragraph, fonts, width, slabs);
        break;
    }
}

void setSignatures(
    const Signatures& signatures, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    const double gap = fonts.points(24);
    const double half = (width - gap) / 2;
    if (!slabs.empty())
        slabs.back().keepWithNext = true;
    for (std::size_t i = 0; i < signatures.who.size(); i += 2) {
        Slab slab;
        slab.before = fonts.points(i == 0 ? 34 : 26);
        slab.keepWithNext = i + 2 < signatures.who.size();
        double bottom = 0;
        for (std::size_t k = i; k < std::min(i + 2, signatures.who.size()); ++k) {
            const double left = k == i ? 0.0 : half + gap;
            SetBlock text;
            text.height = fonts.points(2);
            slab.block.marks.emplace_back(LineMark{{left, 0}, {left + half, 0}, fonts.points(0.6)});
            for (const QString& line :
                fonts.wrap(TextRole::small, printable(signatures.who[k]), half))
                setLine(text, TextRole::small, left, line, fonts);
            bottom = std::max(bottom, text.height);
            std::ranges::move(text.marks, std::back_inserter(slab.block.marks));
        }
        slab.block.height = bottom;
        slabs.push_back(std::move(slab));
    }
}

} // namespace miterbook
