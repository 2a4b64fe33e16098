// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace miterbook {

/// numerator / denominator rounded to the nearest whole number, half away from zero: the one
/// rounding rule of the book. denominator must be positive; the 128-bit step keeps it exact.
__extension__ typedef __int128 Wide;

constexpr std::int64_t roundedQuotient(Wide numerator, Wide denominator) {
    const Wide half = denominator / 2;
    return static_cast<std::int64_t>(
        numerator < 0 ? (numerator - half) / denominator : (numerator + half) / denominator);
}

} // namespace miterbook
