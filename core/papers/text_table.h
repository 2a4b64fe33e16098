// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/paper.h"

namespace miterbook {

/// The lines of a table in a fixed pitch, at most `width` characters where the words allow it:
/// heads, a rule, rows with long texts wrapped, totals under a rule.
std::vector<std::string> textTable(const PaperTable& table, std::size_t width);

} // namespace miterbook
