// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/edit.h"

namespace miterbook {

/// What holds for every kind of row: a proper id, texts that can be kept, words and days that there
/// are. Errors: Fault::badInput naming the row and the field.
Result<void> checkFields(const AnyRow& row);

} // namespace miterbook
