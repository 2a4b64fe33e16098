// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/takeoff.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

bool isMitered(const Piece& piece) {
    const auto slanted
        = [](const PieceEnd& end) { return end.cut == EndCut::miter || end.cut == EndCut::splice; };
    return slanted(piece.left) || slanted(piece.right);
}

/// Adds to the last lot while lengths come in order.
void addLot(std::vector<StickNeed::Lot>& lots, Length length, int count) {
    if (!lots.empty() && lots.back().length == length)
        lots.back().count += count;
    else
        lots.push_back({length, count});
}

std::vector<const Piece*> byProfileLongestFirst(const Takeoff& takeoff) {
    std::vector<const Piece*> pieces;
    pieces.reserve(takeoff.pieces.size());
    for (const Piece& piece : takeoff.pieces) {
        if (piece.profile && piece.count > 0 && piece.longPoint > Length())
            pieces.push_back(&piece);
    }
    std::ranges::sort(pieces, [](const Piece* a, const Piece* b) {
        return a->profile != b->profile ? a->profile < b->profile : a->longPoint > b->longPoint;
    });
    return pieces;
}

} // namespace

Length runningLength(const Takeoff& takeoff, Id<Profile> profile) {
    Length sum;
    for (const Piece& piece : takeoff.pieces) {
        if (piece.profile == profile)
            sum += piece.longPoint * piece.count;
    }
    return sum;
}

std::vector<StickNeed> stickNeeds(const Takeoff& takeoff) {
    std::vector<StickNeed> needs;
    std::map<PieceOfWork, Length> byWork;
    const auto close = [&] {
        if (!needs.empty())
            needs.back().byWork.assign(byWork.begin(), byWork.end());
        byWork.clear();
    };
    for (const Piece* piece : byProfileLongestFirst(takeoff)) {
        if (needs.empty() || needs.back().profile != piece->profile) {
            close();
            needs.push_back({piece->profile, false, {}, {}});
        }
        StickNeed& need = needs.back();
        addLot(need.lots, piece->longPoint, piece->count);
        need.mitered = need.mitered || isMitered(*piece);
        byWork[piece->work] += piece->longPoint * piece->count;
    }
    close();
    return needs;
}

} // namespace miterbook
