// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/splice.h"

#include <algorithm>

namespace miterbook {

namespace {

/// A last piece shorter than this would reach over one stud only; the last two are evened out.
constexpr Length shortestLast = Length::inches(16);

std::int64_t quotientUp(Length a, Length b) {
    return (a.nm() + b.nm() - 1) / b.nm();
}

void evenOutEnd(std::vector<Length>& pieces) {
    if (pieces.size() < 2 || pieces.back() >= shortestLast)
        return;
    Length& last = pieces.back();
    Length& before = pieces[pieces.size() - 2];
    const Length both = last + before;
    before = both / 2;
    last = both - before;
}

/// A stretch without openings: n pieces with n - 1 splices, stretch + splices x scarf <= n x
/// longest.
std::vector<Length> spliceStretch(Length stretch, Length longest, Length scarf) {
    if (longest <= scarf || stretch <= longest)
        return {stretch};
    std::int64_t count = quotientUp(stretch, longest);
    const auto total = [&] { return stretch + scarf * (count - 1); };
    while (total() > longest * count)
        ++count;
    std::vector<Length> pieces(static_cast<std::size_t>(count) - 1, longest);
    pieces.push_back(total() - longest * (count - 1));
    evenOutEnd(pieces);
    return pieces;
}

} // namespace

SplicedRun spliceRun(Length run, Length longest, Length scarf, int openings) {
    SplicedRun result;
    const std::int64_t stretches = std::int64_t(openings) + 1;
    for (std::int64_t i = 0; i < stretches; ++i) {
        const Length stretch = run * (i + 1) / stretches - run * i / stretches;
        if (stretch <= Length())
            continue;
        result.longest = std::max(result.longest, stretch);
        const std::vector<Length> pieces = spliceStretch(stretch, longest, scarf);
        for (std::size_t k = 0; k < pieces.size(); ++k)
            result.parts.push_back({pieces[k], k > 0});
        result.splices += static_cast<int>(pieces.size()) - 1;
    }
    return result;
}

std::string splicedText(Length run, Length stick, const Tally& tally) {
    const Length trim = tally.practice().endTrim;
    return " of " + tally.text(run) + " is longer than the longest stick stocked ("
        + tally.stick(stick) + (trim > Length() ? " less " + tally.text(trim) + " end trim" : "")
        + "); spliced.";
}

void addRun(Piece piece, Length run, Tally& tally) {
    const Practice& practice = tally.practice();
    const Length stick = tally.stock(piece.profile).longest();
    const SplicedRun spliced = spliceRun(run, stick - practice.endTrim, practice.scarf, 0);
    if (spliced.splices > 0)
        tally.warn(
            piece.source, piece.source.name + ": " + piece.part + splicedText(run, stick, tally));
    const std::size_t count = spliced.parts.size();
    for (std::size_t i = 0; i < count; ++i) {
        Piece part = piece;
        part.shortPoint = part.longPoint = spliced.parts[i].length;
        if (i > 0)
            part.left = {EndCut::splice, 45, 0};
        if (i + 1 < count)
            part.right = {EndCut::splice, 45, 0};
        tally.add(std::move(part));
    }
}

} // namespace miterbook
