// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"
#include "basics/money.h"
#include "basics/words.h"

#include <array>
#include <compare>
#include <cstdint>

namespace miterbook {

/// What a quantity counts.
enum class Unit { each, linearFoot, squareFoot, side, flight, trip, hour };

template <>
struct Words<Unit> {
    static constexpr std::array list{
        Word{Unit::each, "each"},
        Word{Unit::linearFoot, "LF"},
        Word{Unit::squareFoot, "SF"},
        Word{Unit::side, "side"},
        Word{Unit::flight, "flight"},
        Word{Unit::trip, "trip"},
        Word{Unit::hour, "hour"},
    };
};

/// An amount of some unit in whole thousandths: 12.345 LF is 12 345. Which unit is said beside it.
class Quantity {
public:
    constexpr Quantity() = default;
    static constexpr Quantity thousandths(std::int64_t t) { return Quantity(t); }
    static constexpr Quantity count(std::int64_t n) { return Quantity(n * 1000); }
    /// Running feet, rounded to the nearest thousandth.
    static constexpr Quantity runningFeet(Length length) {
        return Quantity(roundedQuotient(Wide(length.nm()) * 1000, Wide(Length::nmPerInch) * 12));
    }
    /// Square feet of a rectangle, rounded to the nearest thousandth.
    static constexpr Quantity squareFeet(Length a, Length b) {
        const Wide foot = Wide(Length::nmPerInch) * 12;
        return Quantity(roundedQuotient(Wide(a.nm()) * b.nm() * 1000, foot * foot));
    }

    constexpr std::int64_t thousandths() const { return m_value; }
    constexpr double toDouble() const { return static_cast<double>(m_value) / 1000.0; }
    constexpr Quantity& operator+=(Quantity o) {
        m_value += o.m_value;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) {
        return Quantity(a.m_value - b.m_value);
    }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) {
        return Quantity(a.m_value * n);
    }
    constexpr auto operator<=>(const Quantity&) const = default;

private:
    constexpr explicit Quantity(std::int64_t t)
        : m_value(t) {}

    std::int64_t m_value = 0;
};

/// Quantity x price for one, rounded once to the cent.
constexpr Money cost(Quantity quantity, UnitPrice price) {
    return Money::cents(
        roundedQuotient(Wide(quantity.thousandths()) * price.tenThousandths(), 100'000));
}

} // namespace miterbook
