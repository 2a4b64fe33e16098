// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"
#include "takeoff/tally.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

bool slanted(const PieceEnd& end) {
    return end.cut == EndCut::miter || end.cut == EndCut::splice;
}

PaperBars::Part partOf(const SheetPiece& piece, LengthStyle style, bool later) {
    PaperBars::Part part;
    part.length = piece.longPoint.toInches();
    part.text = std::string(piece.isCut() ? "✓ " : "") + formatLength(piece.shortPoint, style) + " "
        + oneLine(piece.piece.source.name) + (later ? ", later" : "");
    part.slantLeft = slanted(piece.piece.left);
    part.slantRight = slanted(piece.piece.right);
    return part;
}

PaperBars::Bar barOf(
    const SawSheet& sheet, const SheetStick& stick, Id<Level> level, LengthStyle style) {
    PaperBars::Bar bar;
    bar.title = std::to_string(stick.number) + ": " + stickText(stick.length)
        + (stick.fromRack ? ", from the rack" : "");
    bar.length = stick.length.toInches();
    bar.left = formatLength(stick.left, style);
    if (stick.gone > Length())
        bar.parts.push_back({stick.gone.toInches(), "gone", false, false, true});
    for (const std::size_t at : stick.pieces) {
        const SheetPiece& piece = sheet.pieces[at];
        bar.parts.push_back(partOf(piece, style, level && piece.piece.source.level != level));
    }
    return bar;
}

bool isOnLevel(const SawSheet& sheet, const SheetStick& stick, Id<Level> level) {
    return !level || std::ranges::any_of(stick.pieces, [&](std::size_t at) {
        return sheet.pieces[at].piece.source.level == level;
    });
}

} // namespace

Paper sticksPaper(const PaperJob& job, const JobFigures& figures) {
    const SawSheet sheet = cutFiguresFor(job.book, figures).sheet;
    const LengthStyle style = sawStyle(job.book.prices.shop());
    Paper paper = beginPaper("sticks", "Stick diagrams", job);
    paper.type = Paper::Type::wall;
    addSawFacts(paper, job, figures);
    std::set<Id<Profile>> profiles;
    for (const SheetStick& stick : sheet.sticks)
        profiles.insert(stick.profile);
    int count = 0;
    for (const Id<Profile> profile : profiles) {
        PaperBars bars;
        bars.title = oneLine(job.book.prices.profileName(profile));
        for (const SheetStick& stick : sheet.sticks) {
            if (stick.profile == profile && isOnLevel(sheet, stick, job.level))
                bars.bars.push_back(barOf(sheet, stick, job.level, style));
        }
        count += static_cast<int>(bars.bars.size());
        if (!bars.bars.empty())
            paper.blocks.emplace_back(std::move(bars));
    }
    if (count == 0)
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No stick to cut yet."}});
    else
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
            {"Drawn to scale. In each piece its short point and what it is for; at the end what is "
             "left. ✓: cut already."}});
    if (count > 0)
        paper.blocks.emplace_back(sawCaution());
    addSection(paper, "Look at", Paragraph::Style::list, sheet.problems);
    paper.totals.emplace_back("sticks", countCell(count));
    return paper;
}

} // namespace miterbook
