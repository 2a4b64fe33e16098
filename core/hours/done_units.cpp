// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/done_units.h"

namespace miterbook {

Unit doneUnit(PieceOfWork work) {
    switch (work) {
    case PieceOfWork::base:
    case PieceOfWork::crown:
    case PieceOfWork::closets:
        return Unit::linearFoot;
    case PieceOfWork::wallTreatment:
        return Unit::squareFoot;
    case PieceOfWork::stairs:
        return Unit::flight;
    case PieceOfWork::trips:
        return Unit::trip;
    case PieceOfWork::punch:
    case PieceOfWork::extras:
        return Unit::hour;
    default:
        return Unit::each;
    }
}

Unit doneUnit(PieceOfWork work, Task task) {
    return task == Task::other ? doneUnit(work) : unitOf(task);
}

Unit doneUnit(const TimeEntry& entry) {
    return doneUnit(entry.work, entry.task);
}

bool countsAsDone(Task task) {
    switch (task) {
    case Task::longSide:
    case Task::nonSquareCorner:
    case Task::mullCasing:
    case Task::jambExtension:
    case Task::shoe: // runs where base runs
        return false;
    default:
        return unitOf(task) == doneUnit(pieceOfWork(task));
    }
}

std::optional<PieceOfWork> bidWorkOf(const TimeEntry& entry) {
    switch (entry.kind) {
    case TimeKind::work:
        return entry.work;
    case TimeKind::travel:
        return PieceOfWork::trips;
    case TimeKind::punch:
        return PieceOfWork::punch;
    default:
        return std::nullopt;
    }
}

} // namespace miterbook
