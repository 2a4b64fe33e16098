// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"

#include <string>

namespace miterbook {

/// What the user calls a row, for a sentence: `opening "W4"`, `profile "Oak base"`, and `stick 12`
/// for rows that have no name of their own.
std::string titleOf(const AnyRow& row);

} // namespace miterbook
