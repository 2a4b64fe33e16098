// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"

namespace miterbook {

/// Gives the sample's shop an invented logo, a frame's corner with its miter, unless it has one.
Result<void> addSampleLogo(OpenedBook& opened);

} // namespace miterbook
