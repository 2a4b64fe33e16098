// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/task.h"

namespace miterbook {

Unit unitOf(Task task) {
    switch (task) {
    case Task::base:
    case Task::shoe:
    case Task::smallCrown:
    case Task::mediumCrown:
    case Task::largeCrown:
    case Task::chairRail:
    case Task::shelfAndRod:
    case Task::railPostToPost:
    case Task::railOverPost:
    case Task::halfWallCap:
        return Unit::linearFoot;
    case Task::shiplap:
    case Task::boardAndBatten:
    case Task::wainscot:
        return Unit::squareFoot;
    case Task::longSide:
        return Unit::side;
    case Task::treadsAndRisers:
        return Unit::flight;
    case Task::trip:
        return Unit::trip;
    case Task::punch:
    case Task::other:
        return Unit::hour;
    default:
        return Unit::each;
    }
}

PieceOfWork pieceOfWork(Task task) {
    if (task <= Task::casedOpening)
        return PieceOfWork::doors;
    if (task <= Task::jambExtension)
        return PieceOfWork::windows;
    if (task <= Task::shoe)
        return PieceOfWork::base;
    if (task <= Task::largeCrown)
        return PieceOfWork::crown;
    if (task <= Task::wainscot)
        return PieceOfWork::wallTreatment;
    if (task <= Task::closetShelf)
        return PieceOfWork::closets;
    if (task <= Task::halfWallCap)
        return PieceOfWork::stairs;
    if (task <= Task::mantel)
        return PieceOfWork::builtIns;
    if (task <= Task::doorStop)
        return PieceOfWork::hardware;
    switch (task) {
    case Task::trip:
        return PieceOfWork::trips;
    case Task::punch:
        return PieceOfWork::punch;
    default:
        return PieceOfWork::extras;
    }
}

} // namespace miterbook
