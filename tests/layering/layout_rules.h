// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layering/source_tree.h"

namespace miterbook {

inline constexpr std::size_t mostLines = 500;
inline constexpr std::size_t widest = 100; // characters

/// Every file over 500 lines, without the licence line on top (below a script's `#!` line), every
/// header without `#pragma once`, every C++ name that is not lower case with underscores and every
/// line of C++ over 100 characters.
std::vector<Finding> badLayout(const std::vector<SourceFile>& files);

} // namespace miterbook
