// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace miterbook {

namespace {

bool slanted(const PieceEnd& end) {
    return end.cut == EndCut::miter || end.cut == EndCut::splice;
}

/// A piece as it is drawn, whoever it is for.
struct DrawnPiece {
    Length shortPoint;
    Length longPoint;
    bool slantLeft = false;
    bool slantRight = false;
    bool isCut = false;
    bool later = false; ///< of another level

    bool operator==(const DrawnPiece&) const = default;
};

/// Sticks that are cut alike and are as far, drawn once.
struct SticksAlike {
    Length length;
    bool fromRack = false;
    Length gone;
    Length left;
    std::vector<DrawnPiece> pieces;
    std::vector<const SheetStick*> sticks;

    bool isLike(const SticksAlike& other) const {
        return std::tie(length, fromRack, gone, left, pieces)
            == std::tie(other.length, other.fromRack, other.gone, other.left, other.pieces);
    }
};

SticksAlike drawn(const SawSheet& sheet, const SheetStick& stick, Id<Level> level) {
    SticksAlike one{stick.length, stick.fromRack, stick.gone, stick.left, {}, {&stick}};
    for (const std::size_t at : stick.pieces) {
        const SheetPiece& piece = sheet.pieces[at];
        one.pieces.push_back({piece.shortPoint, piece.longPoint, slanted(piece.piece.left),
            slanted(piece.piece.right), piece.isCut(), level && piece.piece.source.level != level});
    }
    return one;
}

/// Whose the n-th pieces of the sticks are.
std::string namesOf(const SawSheet& sheet, const SticksAlike& alike, std::size_t n) {
    std::vector<std::string> names;
    for (const SheetStick* stick : alike.sticks) {
        const std::string& name = sheet.pieces[stick->pieces[n]].piece.source.name;
        if (std::ranges::find(names, name) == names.end())
            names.push_back(name);
    }
    return nameRanges(names);
}

std::string titleOf(const SticksAlike& alike, LengthUnit written) {
    std::vector<int> numbers;
    for (const SheetStick* stick : alike.sticks)
        numbers.push_back(stick->number);
    const std::size_t count = numbers.size();
    return numberRanges(std::move(numbers)) + ": "
        + (count > 1 ? std::to_string(count) + " of " : std::string())
        + stickText(alike.length, written) + (alike.fromRack ? ", from the rack" : "");
}

PaperBars::Bar barOf(const SawSheet& sheet, const SticksAlike& alike, LengthStyle style) {
    PaperBars::Bar bar;
    bar.title = titleOf(alike, style.unit);
    bar.length = alike.length.toInches();
    bar.left = formatLength(alike.left, style);
    if (alike.gone > Length())
        bar.parts.push_back({alike.gone.toInches(), "gone", {}, false, false, true});
    for (std::size_t n = 0; n < alike.pieces.size(); ++n) {
        const DrawnPiece& piece = alike.pieces[n];
        PaperBars::Part part;
        part.length = piece.longPoint.toInches();
        part.text = (piece.isCut ? "✓ " : "") + formatLength(piece.shortPoint, style);
        part.of = namesOf(sheet, alike, n) + (piece.later ? ", later" : "");
        part.slantLeft = piece.slantLeft;
        part.slantRight = piece.slantRight;
        bar.parts.push_back(std::move(part));
    }
    return bar;
}

bool isOnLevel(const SawSheet& sheet, const SheetStick& stick, Id<Level> level) {
    return !level || std::ranges::any_of(stick.pieces, [&](std::size_t at) {
        return sheet.pieces[at].piece.source.level == level;
    });
}

/// The sticks of a profile that the level needs, those alike together, by their first number.
std::vector<SticksAlike> sticksAlike(const SawSheet& sheet, Id<Profile> profile, Id<Level> level) {
    std::vector<SticksAlike> all;
    for (const SheetStick& stick : sheet.sticks) {
        if (stick.profile != profile || !isOnLevel(sheet, stick, level))
            continue;
        SticksAlike one = drawn(sheet, stick, level);
        const auto like = std::ranges::find_if(
            all, [&](const SticksAlike& each) { return each.isLike(one); });
        if (like == all.end())
            all.push_back(std::move(one));
        else
            like->sticks.push_back(&stick);
    }
    return all;
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
        for (const SticksAlike& alike : sticksAlike(sheet, profile, job.level)) {
            count += static_cast<int>(alike.sticks.size());
            bars.bars.push_back(barOf(sheet, alike, style));
        }
        if (!bars.bars.empty())
            paper.blocks.emplace_back(std::move(bars));
    }
    if (count == 0)
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No stick to cut yet."}});
    else
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
            {"Drawn to scale, sticks that are cut alike once. In each piece its short point and "
             "what it is for; at the end what is left. ✓: cut already."}});
    if (count > 0)
        paper.blocks.emplace_back(sawCaution());
    addSection(paper, "Look at", Paragraph::Style::list, sheet.problems);
    paper.totals.emplace_back("sticks", countCell(count));
    return paper;
}

} // namespace miterbook
