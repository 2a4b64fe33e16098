// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "windows/main_window.h"

#include <vector>

namespace miterbook {

/// The stages that work, in the order they stand on the strip.
std::vector<StageFactory> workingStages();

} // namespace miterbook
