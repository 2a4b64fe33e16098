// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"

#include <compare>
#include <cstdint>

namespace miterbook {

/// A percentage in whole basis points: 12.5 % is 1250. Exact.
class Percent {
public:
    constexpr Percent() = default;
    static constexpr Percent basisPoints(std::int64_t bp) { return Percent(bp); }
    static constexpr Percent whole(std::int64_t percent) { return Percent(percent * 100); }
    static constexpr Percent hundred() { return whole(100); }

    constexpr std::int64_t basisPoints() const { return m_bp; }
    constexpr double fraction() const { return static_cast<double>(m_bp) / 10'000.0; }
    friend constexpr Percent operator+(Percent a, Percent b) { return Percent(a.m_bp + b.m_bp); }
    friend constexpr Percent operator-(Percent a, Percent b) { return Percent(a.m_bp - b.m_bp); }
    constexpr auto operator<=>(const Percent&) const = default;

private:
    constexpr explicit Percent(std::int64_t bp)
        : m_bp(bp) {}

    std::int64_t m_bp = 0;
};

} // namespace miterbook
