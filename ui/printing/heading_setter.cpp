// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/heading_setter.h"

#include "printing/block_setter.h"
#include "printing/printable_text.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The shop's name and lines take the left three fifths.
constexpr double shopShare = 0.6;

/// The shop's picture above its name: 0.6 in high, less where it would be too wide.
void setLogo(const Paper& paper, const PaperFonts& fonts, double width, SetBlock& block) {
    const std::string& content = paper.logo.content.content();
    if (paper.type != Paper::Type::office || content.empty())
        return;
    const QImage picture = QImage::fromData(
        reinterpret_cast<const uchar*>(content.data()), static_cast<int>(content.size()));
    if (picture.isNull())
        return;
    const QSizeF size
        = QSizeF(picture.size()).scaled(width, fonts.points(43.2), Qt::KeepAspectRatio);
    block.marks.emplace_back(PictureMark{{QPointF(0, 0), size}, picture});
    block.height = size.height() + fonts.points(5);
}

SetBlock shopBlock(const Paper& paper, const PaperFonts& fonts, double width) {
    SetBlock block;
    setLogo(paper, fonts, width, block);
    // Nobody writes to the shop from what hangs at the saw.
    const std::size_t most = paper.type == Paper::Type::wall ? 1 : paper.letterhead.size();
    for (std::size_t i = 0; i < std::min(most, paper.letterhead.size()); ++i) {
        const TextRole role = i == 0 ? TextRole::shop : TextRole::small;
        for (const QString& line : fonts.wrap(role, printable(paper.letterhead[i]), width))
            setLine(block, role, 0, line, fonts);
        if (i == 0)
            block.height += fonts.points(2);
    }
    return block;
}

/// The title's lines end at the right edge; the first stands on the shop's baseline.
SetBlock titleBlock(const Paper& paper, const PaperFonts& fonts, double width, double right) {
    SetBlock block;
    double baseline = fonts.ascent(TextRole::shop);
    for (const QString& line : fonts.wrap(TextRole::title, printable(paper.title), width)) {
        const double left = right - fonts.width(TextRole::title, line);
        block.marks.emplace_back(TextMark{TextRole::title, {left, baseline}, line});
        block.height = baseline + fonts.lineHeight(TextRole::title) * 0.25;
        baseline += fonts.lineHeight(TextRole::title);
    }
    return block;
}

void setMasthead(
    const Paper& paper, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    Slab slab;
    slab.block = shopBlock(paper, fonts, width * shopShare);
    SetBlock title = titleBlock(paper, fonts, width * (1 - shopShare) - fonts.points(12), width);
    slab.block.height = std::max(slab.block.height, title.height) + fonts.points(7);
    std::ranges::move(title.marks, std::back_inserter(slab.block.marks));
    slab.block.marks.emplace_back(
        LineMark{{0, slab.block.height}, {width, slab.block.height}, fonts.points(1.2)});
    slab.block.height += fonts.points(8);
    slab.keepWithNext = true;
    slabs.push_back(std::move(slab));
}

/// On a wall facts run on in as few lines as they take.
void setRunningFacts(
    const Paper& paper, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    QStringList facts;
    for (const auto& [what, fact] : paper.facts)
        facts << printable(what + ": " + fact);
    if (facts.isEmpty())
        return;
    Slab slab;
    slab.keepWithNext = true;
    for (const QString& line :
        fonts.wrap(TextRole::body, facts.join(QStringLiteral("  \u00b7  ")), width))
        setLine(slab.block, TextRole::body, 0, line, fonts);
    slabs.push_back(std::move(slab));
}

void setFactColumns(
    const Paper& paper, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    constexpr std::size_t columns = 3;
    const double gap = fonts.points(14);
    const double column = (width - gap * static_cast<double>(columns - 1))
        / static_cast<double>(columns);
    for (std::size_t first = 0; first < paper.facts.size(); first += columns) {
        Slab slab;
        slab.keepWithNext = true;
        const std::size_t end = std::min(first + columns, paper.facts.size());
        for (std::size_t i = first; i < end; ++i) {
            const double left = static_cast<double>(i - first) * (column + gap);
            SetBlock fact;
            setLine(fact, TextRole::small, left, printable(paper.facts[i].first), fonts);
            for (const QString& line :
                fonts.wrap(TextRole::body, printable(paper.facts[i].second), column))
                setLine(fact, TextRole::body, left, line, fonts);
            slab.block.height = std::max(slab.block.height, fact.height);
            std::ranges::move(fact.marks, std::back_inserter(slab.block.marks));
        }
        slab.block.height += fonts.points(5);
        slabs.push_back(std::move(slab));
    }
}

} // namespace

void setPaperHeading(
    const Paper& paper, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    setMasthead(paper, fonts, width, slabs);
    if (paper.type == Paper::Type::wall)
        setRunningFacts(paper, fonts, width, slabs);
    else
        setFactColumns(paper, fonts, width, slabs);
}

} // namespace miterbook
