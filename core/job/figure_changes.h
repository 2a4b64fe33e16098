// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <vector>

namespace miterbook {

/// Whether any of the changes can alter what is computed for a job. What is measured, ticked off or
/// tested at the saw does not: takeoff, price and order go by plan and prices.
bool alterFigures(const std::vector<Change>& changes);

} // namespace miterbook
