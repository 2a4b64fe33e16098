// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length_text.h"
#include "basics/words.h"

#include <string>

namespace miterbook {

template <>
struct Words<LengthUnit> {
    static constexpr std::array list{
        Word{LengthUnit::inches, "inches"},
        Word{LengthUnit::feetInches, "feet and inches"},
        Word{LengthUnit::millimetres, "millimetres"},
    };
};

struct Logo;

enum class PageSize { letter, a4 };

template <>
struct Words<PageSize> {
    static constexpr std::array list{Word{PageSize::letter, "Letter"}, Word{PageSize::a4, "A4"}};
};

/// The user's firm, and how its book writes things. One row, id 1.
struct Shop {
    Id<Shop> id;
    std::string name;
    std::string address; ///< lines separated by '\n'
    std::string phone;
    std::string email;
    std::string licence; ///< contractor licence number as it must be shown, or empty
    std::string currency = "$";
    LengthUnit unit = LengthUnit::inches;
    int denominator = 16;
    PageSize page = PageSize::letter;
    bool monthFirst = true; ///< dates as 11/25/2026
    Id<Logo> logo;          ///< on the letterhead; none: the name alone

    LengthStyle lengths() const { return {unit, denominator}; }
    bool operator==(const Shop&) const = default;
};

template <>
struct Describe<Shop> {
    static constexpr std::string_view table = "shop";
    static constexpr std::string_view noun = "shop";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Shop::id), field("name", &Shop::name), field("address", &Shop::address),
            field("phone", &Shop::phone), field("email", &Shop::email),
            field("licence", &Shop::licence), field("currency", &Shop::currency),
            field("unit", &Shop::unit), field("denominator", &Shop::denominator),
            field("page", &Shop::page), field("month_first", &Shop::monthFirst),
            field("logo", &Shop::logo));
    }
};

} // namespace miterbook
