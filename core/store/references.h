// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "store/connection.h"

namespace miterbook {

/// Why the edit, written but not committed, leaves a reference dangling: "The profile "Oak base" is
/// still used by stick 12." or "The opening "W4" names a profile that is not in the book."
Error explainBrokenReference(Connection& connection, const Edit& edit);

} // namespace miterbook
