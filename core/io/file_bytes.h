// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <cstdint>
#include <string>

namespace miterbook {

/// No file of text that comes in may be larger.
inline constexpr std::int64_t largestTextFile = 16 * 1024 * 1024;

/// The bytes of a file. Errors: Fault::storage when it cannot be read, Fault::badInput when it is
/// larger than largestTextFile; the sentence names the file.
Result<std::string> readFileBytes(const std::string& path);

/// The last part of a path, as sentences name a file: "windows.csv".
std::string fileName(const std::string& path);

} // namespace miterbook
