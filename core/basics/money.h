// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"
#include "basics/percent.h"

#include <compare>
#include <cstdint>

namespace miterbook {

/// An amount of money in whole cents. The currency is the book's.
class Money {
public:
    constexpr Money() = default;
    static constexpr Money cents(std::int64_t c) { return Money(c); }
    static constexpr Money dollars(std::int64_t d) { return Money(d * 100); }

    constexpr std::int64_t cents() const { return m_cents; }
    constexpr Money operator-() const { return Money(-m_cents); }
    constexpr Money& operator+=(Money o) {
        m_cents += o.m_cents;
        return *this;
    }
    constexpr Money& operator-=(Money o) {
        m_cents -= o.m_cents;
        return *this;
    }
    friend constexpr Money operator+(Money a, Money b) { return a += b; }
    friend constexpr Money operator-(Money a, Money b) { return a -= b; }
    friend constexpr Money operator*(Money a, std::int64_t n) { return Money(a.m_cents * n); }
    constexpr auto operator<=>(const Money&) const = default;

private:
    constexpr explicit Money(std::int64_t c)
        : m_cents(c) {}

    std::int64_t m_cents = 0;
};

/// The share of an amount, rounded to the cent (half away from zero).
constexpr Money share(Money amount, Percent percent) {
    return Money::cents(roundedQuotient(Wide(amount.cents()) * percent.basisPoints(), 10'000));
}

/// A price for one unit of something, in 1/10 000 of a dollar: fine enough for cents a foot.
class UnitPrice {
public:
    constexpr UnitPrice() = default;
    static constexpr UnitPrice tenThousandths(std::int64_t t) { return UnitPrice(t); }
    static constexpr UnitPrice cents(std::int64_t c) { return UnitPrice(c * 100); }

    constexpr std::int64_t tenThousandths() const { return m_value; }
    constexpr auto operator<=>(const UnitPrice&) const = default;

private:
    constexpr explicit UnitPrice(std::int64_t t)
        : m_value(t) {}

    std::int64_t m_value = 0;
};

} // namespace miterbook
