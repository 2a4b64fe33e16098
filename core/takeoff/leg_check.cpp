// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/leg_check.h"

#include "takeoff/geometry.h"

#include <algorithm>

namespace miterbook {

namespace {

/// A stick that a leg misses by no more than this is the one a buyer would have taken for it.
constexpr Length nearMiss = Length::inches(6);

/// What `n` legs take of a stick: long points, the mitered cuts between them, the end trim.
Length taken(int n, Length leg, const Practice& practice) {
    return leg * n + kerfTaken(practice.kerf, true) * (n - 1) + practice.endTrim;
}

bool justMisses(int n, Length leg, Length stick, const Practice& practice) {
    const Length over = taken(n, leg, practice) - stick;
    return over > Length() && over <= nearMiss * n;
}

/// `; one does not come out of 7 ft, nor do two out of 14 ft`, over the stocked sticks; may be
/// empty.
std::string missedSticks(Length leg, const Stock& stock, const Tally& tally) {
    const Practice& practice = tally.practice();
    std::string one;
    std::string two;
    for (const Length stick : stock.lengths) {
        if (justMisses(1, leg, stick, practice))
            one = tally.stick(stick);
        if (justMisses(2, leg, stick, practice))
            two = tally.stick(stick);
    }
    if (!one.empty())
        return "; one does not come out of " + one
            + (two.empty() ? "" : ", nor do two out of " + two);
    return two.empty() ? "" : "; two do not come out of " + two;
}

} // namespace

Length legStanding(const Opening& opening, const Practice& practice) {
    if (opening.isWindow())
        return {};
    return (opening.fromSubfloor ? opening.flooring : Length()) - practice.floorGap;
}

void checkLeg(const OpeningTrim& trim, const Piece& leg, bool& said, Tally& tally) {
    const Practice& practice = tally.practice();
    const Length pair = practice.longestLeg * 2;
    const Stock& stock = tally.stock(trim.casing);
    const bool longer = leg.longPoint > practice.longestLeg;
    const bool missesPair = std::ranges::find(stock.lengths, pair) != stock.lengths.end()
        && justMisses(2, leg.longPoint, pair, practice);
    if (said || (!longer && !missesPair))
        return;
    said = true;
    std::string sentence = trim.source.name + ": its leg is " + tally.text(leg.longPoint);
    if (longer)
        sentence += ", longer than " + tally.stick(practice.longestLeg) + " legs";
    tally.warn(trim.source, sentence + missedSticks(leg.longPoint, stock, tally) + ".");
}

} // namespace miterbook
