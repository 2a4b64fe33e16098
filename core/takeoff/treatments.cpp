// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/treatments.h"

#include "takeoff/conditions.h"
#include "takeoff/splice.h"

namespace miterbook {

namespace {

int timesUp(Length whole, Length step) {
    return static_cast<int>((whole.nm() + step.nm() - 1) / step.nm());
}

Task taskOf(TreatmentKind kind) {
    switch (kind) {
    case TreatmentKind::boardAndBatten:
        return Task::boardAndBatten;
    case TreatmentKind::wainscot:
        return Task::wainscot;
    case TreatmentKind::shiplap:
        break;
    }
    return Task::shiplap;
}

Piece boardOf(const Source& source, Id<Profile> profile, std::string part, int count) {
    Piece piece;
    piece.work = PieceOfWork::wallTreatment;
    piece.source = source;
    piece.profile = profile;
    piece.part = std::move(part);
    piece.count = count;
    return piece;
}

/// The boards themselves; the profile is in the book.
void takeBoards(const WallTreatment& wall, const Source& source, Tally& tally) {
    if (wall.spacing <= Length()) {
        tally.problem(source, source.name + " has no board spacing; its boards are not counted.");
        return;
    }
    if (wall.kind == TreatmentKind::shiplap) {
        addRun(boardOf(source, wall.board, "course", timesUp(wall.height, wall.spacing)),
            wall.width, tally);
        return;
    }
    const int uprights = timesUp(wall.width, wall.spacing) + 1;
    const bool wainscot = wall.kind == TreatmentKind::wainscot;
    addRun(
        boardOf(source, wall.board, wainscot ? "stile" : "batten", uprights), wall.height, tally);
    if (wainscot)
        addRun(boardOf(source, wall.board, "rail", 2), wall.width, tally);
}

void takeCap(const WallTreatment& wall, const Source& source, Tally& tally) {
    const Profile* cap = wall.cap ? tally.usable(wall.cap, source, "cap") : nullptr;
    if (!cap)
        return;
    addRun(boardOf(source, wall.cap, "cap", 1), wall.width, tally);
    tally.add(TaskCount{PieceOfWork::wallTreatment, Task::chairRail,
        Quantity::runningFeet(wall.width), conditionsFor(tally, source, cap), source, "cap"});
}

} // namespace

void takeTreatment(const WallTreatment& wall, Tally& tally) {
    const Source source = tally.sourceOf(wall);
    if (wall.width <= Length() || wall.height <= Length()) {
        tally.problem(source, source.name + " has no size; it is not counted.");
        return;
    }
    const Profile* board = wall.board ? tally.usable(wall.board, source, "boards") : nullptr;
    tally.add(TaskCount{PieceOfWork::wallTreatment, taskOf(wall.kind),
        Quantity::squareFeet(wall.width, wall.height), conditionsFor(tally, source, board), source,
        tally.text(wall.width) + " x " + tally.text(wall.height)});
    if (board)
        takeBoards(wall, source, tally);
    takeCap(wall, source, tally);
}

void takeOtherWork(const OtherWork& other, Tally& tally) {
    const Source source = tally.sourceOf(other);
    const PieceOfWork work = pieceOfWork(other.task);
    const Profile* stock = other.profile ? tally.usable(other.profile, source, "material")
                                         : nullptr;
    if (other.quantity > Quantity())
        tally.add(TaskCount{
            work, other.task, other.quantity, conditionsFor(tally, source, stock), source, {}});
    if (stock && other.length > Length()) {
        Piece piece = boardOf(source, other.profile, "material", 1);
        piece.work = work;
        addRun(std::move(piece), other.length, tally);
    }
    if (other.material > Money())
        tally.add(BoughtGoods{work, other.material, source});
}

} // namespace miterbook
