// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace miterbook {

/// What somebody typed, in quotes for a sentence; long input is cut at 60 bytes, between
/// characters.
std::string inQuotes(std::string_view text);

/// First letter in upper case (ASCII).
std::string capitalised(std::string_view text);

} // namespace miterbook
