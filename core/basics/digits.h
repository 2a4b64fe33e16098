// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace miterbook {

/// Whether the character is one of 0 to 9, whatever the machine's locale.
constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace miterbook
