// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// Changes as JSON text for the journal: `[{"kind": "opening", "before": {...}, "after": {...}}]`,
/// kind being the row's table; before is left out for a new row, after for a removed one.
std::string changesToText(const std::vector<Change>& changes);

/// The changes that changesToText wrote. Errors: a sentence naming the change that cannot be read.
Result<std::vector<Change>> changesFromText(std::string_view text);

} // namespace miterbook
