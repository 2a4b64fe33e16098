// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"

#include <cstdint>

namespace miterbook {

/// Something about a place or a finish that makes work slower; its factor is in the book.
enum class Condition {
    stainGrade,
    hardwood,
    nineFootCeiling,
    tenFootCeiling,
    overTwelveFootCeiling,
    upperFloor,
    radius,
    builtUpBase,
};

template <>
struct Words<Condition> {
    static constexpr std::array list{
        Word{Condition::stainGrade, "stain grade"},
        Word{Condition::hardwood, "hardwood"},
        Word{Condition::nineFootCeiling, "9 ft ceiling"},
        Word{Condition::tenFootCeiling, "10 ft ceiling"},
        Word{Condition::overTwelveFootCeiling, "ceiling over 12 ft"},
        Word{Condition::upperFloor, "upper floor"},
        Word{Condition::radius, "radius"},
        Word{Condition::builtUpBase, "built-up base"},
    };
};

/// A set of conditions.
class Conditions {
public:
    constexpr void add(Condition c) { m_bits |= bit(c); }
    constexpr void remove(Condition c) { m_bits &= ~bit(c); }
    constexpr bool has(Condition c) const { return (m_bits & bit(c)) != 0; }
    constexpr bool empty() const { return m_bits == 0; }
    constexpr auto operator<=>(const Conditions&) const = default;

private:
    static constexpr std::uint32_t bit(Condition c) { return 1U << static_cast<unsigned>(c); }

    std::uint32_t m_bits = 0;
};

} // namespace miterbook
