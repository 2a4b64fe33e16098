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

} // namespace

SplicedRun spliceRun(Length run, Length longest, Length scarf, int breaks) {
    SplicedRun result;
    if (longest <= scarf || run <= longest) {
        result.pieces = {run};
        return result;
    }
    const std::int64_t parts = quotientUp(run, longest);
    if (parts <= breaks + 1) {
        for (std::int64_t i = 0; i < parts; ++i)
            result.pieces.push_back(run * (i + 1) / parts - run * i / parts);
        return result;
    }
    // n pieces with n - 1 - breaks splices: run + splices x scarf <= n x longest.
    std::int64_t count = parts;
    const auto total = [&] { return run + scarf * (count - 1 - breaks); };
    while (total() > longest * count)
        ++count;
    result.splices = static_cast<int>(count) - 1 - breaks;
    result.pieces.assign(static_cast<std::size_t>(count) - 1, longest);
    result.pieces.push_back(total() - longest * (count - 1));
    evenOutEnd(result.pieces);
    return result;
}

void addRun(Piece piece, Length run, Tally& tally) {
    const Practice& practice = tally.practice();
    const Length stick = tally.stock(piece.profile).longest();
    const SplicedRun spliced = spliceRun(run, stick - practice.endTrim, practice.scarf, 0);
    if (spliced.splices > 0)
        tally.warn(piece.source,
            piece.source.name + ": " + piece.part + " of " + tally.text(run)
                + " is longer than the longest stick stocked (" + stickText(stick) + "); spliced.");
    for (std::size_t i = 0; i < spliced.pieces.size(); ++i) {
        Piece part = piece;
        part.shortPoint = part.longPoint = spliced.pieces[i];
        if (i > 0)
            part.left = {EndCut::splice, 45, 0};
        if (i + 1 < spliced.pieces.size())
            part.right = {EndCut::splice, 45, 0};
        tally.add(std::move(part));
    }
}

} // namespace miterbook
