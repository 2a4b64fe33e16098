// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// Takes a row below a plan away; what was measured at an opening goes with it. What was cut for it
/// stays on record.
template <class Row>
void removeWithMeasures(EditBuilder& edit, Id<Row> id) {
    edit.remove(id);
}
void removeWithMeasures(EditBuilder& edit, Id<Opening> opening);

} // namespace miterbook
