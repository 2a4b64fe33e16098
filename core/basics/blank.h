// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace miterbook {

inline constexpr std::string_view blanks = " \t\r\n";

/// Whether a text holds nothing but blanks.
constexpr bool isBlank(std::string_view text) {
    return text.find_first_not_of(blanks) == std::string_view::npos;
}

/// The text without blanks at either end.
constexpr std::string_view trimmed(std::string_view text) {
    if (isBlank(text))
        return {};
    const auto first = text.find_first_not_of(blanks);
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

} // namespace miterbook
