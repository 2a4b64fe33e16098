// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"

#include <compare>
#include <cstdint>

namespace miterbook {

/// Working time in whole minutes.
class Hours {
public:
    constexpr Hours() = default;
    static constexpr Hours minutes(std::int64_t m) { return Hours(m); }
    static constexpr Hours whole(std::int64_t h) { return Hours(h * 60); }

    constexpr std::int64_t minutes() const { return m_minutes; }
    constexpr double toDouble() const { return static_cast<double>(m_minutes) / 60.0; }
    constexpr Hours& operator+=(Hours o) {
        m_minutes += o.m_minutes;
        return *this;
    }
    friend constexpr Hours operator+(Hours a, Hours b) { return a += b; }
    friend constexpr Hours operator-(Hours a, Hours b) { return Hours(a.m_minutes - b.m_minutes); }
    constexpr auto operator<=>(const Hours&) const = default;

private:
    constexpr explicit Hours(std::int64_t m)
        : m_minutes(m) {}

    std::int64_t m_minutes = 0;
};

/// Minutes of work for one unit of something, in hundredths of a minute: 1.25 min/LF is 125.
class MinutesPerUnit {
public:
    constexpr MinutesPerUnit() = default;
    static constexpr MinutesPerUnit hundredths(std::int64_t h) { return MinutesPerUnit(h); }
    static constexpr MinutesPerUnit whole(std::int64_t m) { return MinutesPerUnit(m * 100); }

    constexpr std::int64_t hundredths() const { return m_value; }
    constexpr double toDouble() const { return static_cast<double>(m_value) / 100.0; }
    constexpr auto operator<=>(const MinutesPerUnit&) const = default;

private:
    constexpr explicit MinutesPerUnit(std::int64_t h)
        : m_value(h) {}

    std::int64_t m_value = 0;
};

} // namespace miterbook
