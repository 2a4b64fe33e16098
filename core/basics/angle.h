// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace miterbook {

/// An angle that somebody entered or a table states, in whole hundredths of a degree. Computed saw
/// angles are plain double degrees.
class Angle {
public:
    constexpr Angle() = default;
    static constexpr Angle hundredths(std::int64_t h) { return Angle(h); }
    static constexpr Angle degrees(std::int64_t d) { return Angle(d * 100); }

    constexpr std::int64_t hundredths() const { return m_value; }
    constexpr double toDegrees() const { return static_cast<double>(m_value) / 100.0; }
    constexpr auto operator<=>(const Angle&) const = default;

private:
    constexpr explicit Angle(std::int64_t h)
        : m_value(h) {}

    std::int64_t m_value = 0;
};

} // namespace miterbook
