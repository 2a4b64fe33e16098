// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace miterbook {

/// value / 10^places as plain decimals (`-12.50`), trailing zeros dropped down to `atLeast` places.
std::string decimalText(std::int64_t value, int places, int atLeast);

/// 10^places.
constexpr std::int64_t powerOfTen(int places) {
    std::int64_t power = 1;
    for (int i = 0; i < places; ++i)
        power *= 10;
    return power;
}

} // namespace miterbook
