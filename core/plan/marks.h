// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/fittings.h"

namespace miterbook {

/// What marks on the plan come to: their number, the running feet of the line through them, or the
/// square feet that they enclose.
Quantity quantityOf(MarkKind kind, const std::vector<PlanPoint>& marks);

/// The unit in which marks of a kind are counted.
Unit unitOf(MarkKind kind);

/// Gives other work its marks, and the quantity that follows; a run also the length of its stick.
void setMarks(OtherWork& other, MarkKind kind, std::vector<PlanPoint> marks);

/// Whether the quantity is what the marks come to; work without marks may have any.
bool agrees(const OtherWork& other);

} // namespace miterbook
