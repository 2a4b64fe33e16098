// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/stool.h"

#include "takeoff/casing.h"

namespace miterbook {

namespace {

/// A board returned into the wall at both ends: mitered, and two small pieces.
void takeReturned(const OpeningTrim& trim, Id<Profile> profile, const std::string& part,
    Length longPoint, Length returnDepth, Tally& tally) {
    Piece board = casingPiece(trim, profile, part, longPoint);
    board.shortPoint = longPoint - 2 * returnDepth;
    board.left = miteredEnd(90);
    board.right = board.left;
    tally.add(std::move(board));
    const Length material = tally.practice().returnPiece;
    if (material <= Length())
        return;
    Piece end = casingPiece(trim, profile, part + " return", material);
    end.shortPoint = {};
    end.left = miteredEnd(90);
    end.count *= 2;
    tally.addReturn(std::move(end));
}

} // namespace

void takeStool(const OpeningTrim& trim, Length sill, Tally& tally) {
    const Length apron = trim.outside(sill);
    const Length horn = tally.practice().horn;
    if (tally.usable(trim.stool, trim.source, "stool"))
        takeReturned(trim, trim.stool, "stool", apron + 2 * horn, horn, tally);
    const bool apronWanted = trim.cased() || trim.opening.casing;
    if (apronWanted && trim.profile)
        takeReturned(trim, trim.casing, "apron", apron, trim.profile->thickness, tally);
}

} // namespace miterbook
