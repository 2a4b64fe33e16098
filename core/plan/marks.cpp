// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/marks.h"

#include "plan/outline.h"

namespace miterbook {

Quantity quantityOf(MarkKind kind, const std::vector<PlanPoint>& marks) {
    switch (kind) {
    case MarkKind::count:
        return Quantity::count(std::ssize(marks));
    case MarkKind::run:
        return Quantity::runningFeet(pathLength(marks));
    case MarkKind::area:
        return areaOf(marks);
    case MarkKind::none:
        break;
    }
    return {};
}

Unit unitOf(MarkKind kind) {
    return kind == MarkKind::run ? Unit::linearFoot
        : kind == MarkKind::area ? Unit::squareFoot
                                 : Unit::each;
}

void setMarks(OtherWork& other, MarkKind kind, std::vector<PlanPoint> marks) {
    other.marked = kind;
    other.quantity = quantityOf(kind, marks);
    if (kind == MarkKind::run && other.profile)
        other.length = pathLength(marks);
    other.marks = std::move(marks);
}

bool agrees(const OtherWork& other) {
    return other.marked == MarkKind::none ? other.marks.empty()
                                          : other.quantity == quantityOf(other.marked, other.marks);
}

} // namespace miterbook
