// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"

namespace miterbook {

/// Whether a row is what the journal says of it, but for what a later step of the schema has
/// reckoned from other rows: changes that are older than the step do not know of that.
bool isAsJournalled(const AnyRow& journalled, const AnyRow& now);

} // namespace miterbook
