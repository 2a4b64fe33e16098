// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace miterbook {

/// A length held exactly as a whole number of nanometres: 1/64 in is 396 875 nm and 0.1 mm is
/// 100 000 nm, so inch and metric lengths mix without rounding. Differences may be negative.
class Length {
public:
    static constexpr std::int64_t nmPerInch = 25'400'000;

    constexpr Length() = default;
    static constexpr Length nanometres(std::int64_t nm) { return Length(nm); }
    static constexpr Length inches(std::int64_t n) { return Length(n * nmPerInch); }
    static constexpr Length feet(std::int64_t n) { return inches(n * 12); }
    static constexpr Length sixteenths(std::int64_t n) { return Length(n * (nmPerInch / 16)); }
    static constexpr Length thirtySeconds(std::int64_t n) { return Length(n * (nmPerInch / 32)); }
    static constexpr Length sixtyFourths(std::int64_t n) { return Length(n * (nmPerInch / 64)); }
    static constexpr Length millimetres(std::int64_t n) { return Length(n * 1'000'000); }
    static constexpr Length tenthsOfMillimetre(std::int64_t n) { return Length(n * 100'000); }
    /// The nearest nanometre to a computed number of inches (geometry with angles).
    static constexpr Length fromInches(double in) {
        const double nm = in * static_cast<double>(nmPerInch);
        return Length(static_cast<std::int64_t>(nm < 0 ? nm - 0.5 : nm + 0.5));
    }

    constexpr std::int64_t nm() const { return m_nm; }
    constexpr double toInches() const {
        return static_cast<double>(m_nm) / static_cast<double>(nmPerInch);
    }
    constexpr double toFeet() const { return toInches() / 12.0; }
    constexpr double toMillimetres() const { return static_cast<double>(m_nm) / 1e6; }

    constexpr Length operator-() const { return Length(-m_nm); }
    constexpr Length& operator+=(Length o) {
        m_nm += o.m_nm;
        return *this;
    }
    constexpr Length& operator-=(Length o) {
        m_nm -= o.m_nm;
        return *this;
    }
    friend constexpr Length operator+(Length a, Length b) { return a += b; }
    friend constexpr Length operator-(Length a, Length b) { return a -= b; }
    friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.m_nm * n); }
    friend constexpr Length operator*(std::int64_t n, Length a) { return a * n; }
    friend constexpr Length operator/(Length a, std::int64_t n) { return Length(a.m_nm / n); }
    /// How many whole times b goes into a; b must not be zero.
    friend constexpr std::int64_t operator/(Length a, Length b) { return a.m_nm / b.m_nm; }
    constexpr auto operator<=>(const Length&) const = default;

private:
    constexpr explicit Length(std::int64_t nm)
        : m_nm(nm) {}

    std::int64_t m_nm = 0;
};

/// The nearest multiple of `step` (half away from zero); step must be positive.
constexpr Length roundTo(Length length, Length step) {
    const std::int64_t half = step.nm() / 2;
    const std::int64_t n = length.nm() < 0 ? (length.nm() - half) / step.nm()
                                           : (length.nm() + half) / step.nm();
    return Length::nanometres(n * step.nm());
}

} // namespace miterbook
