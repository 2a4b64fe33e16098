// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layering/order.h"

namespace miterbook {

/// Every include that breaks a wall of the house:
/// - a folder of core/ or ui/ includes one that comes later, or one that is in no order at all;
/// - core/ includes ui/, app/ or tests/; ui/ includes app/, tests/ or core/store/;
/// - a stage of ui/stages/ includes another stage;
/// - core/ outside io/ and store/ includes Qt; anything outside store/ includes Qt SQL or SQLite.
std::vector<Finding> brokenWalls(const std::vector<SourceFile>& files);

} // namespace miterbook
