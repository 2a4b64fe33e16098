// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "basics/number_text.h"
#include "job/book.h"
#include "job/row_json.h"

#include <algorithm>
#include <string>

namespace miterbook {

/// "wall_thickness" -> "wall thickness".
inline std::string spacedName(std::string_view field) {
    std::string name(field);
    std::ranges::replace(name, '_', ' ');
    return name;
}

/// The value of any field of a plan's row as it is read: a length, a trade word, the name of the
/// profile, room or level that it names, how many a list has.
template <class T>
std::string valueText(const T& value, const Book& book, Id<Plan> plan) {
    const auto named = [](const auto* row) { return row ? row->name : std::string("none"); };
    if constexpr (std::is_same_v<T, bool>)
        return value ? "yes" : "no";
    else if constexpr (std::is_same_v<T, Length>)
        return value == Length() ? "none"
                                 : formatLengthWithUnit(value, book.prices.shop().lengths());
    else if constexpr (std::is_same_v<T, std::string>)
        return value.empty() ? "none" : value;
    else if constexpr (Worded<T>)
        return std::string(word(value));
    else if constexpr (std::is_same_v<T, Id<Profile>>)
        return named(book.prices.profile(value));
    else if constexpr (std::is_same_v<T, Id<Room>>)
        return named(book.sheet(plan).of<Room>().find(value));
    else if constexpr (std::is_same_v<T, Id<Level>>)
        return named(book.sheet(plan).of<Level>().find(value));
    else if constexpr (std::is_same_v<T, Quantity>)
        return formatQuantity(value);
    else if constexpr (requires { value.toDegrees(); })
        return std::to_string(static_cast<int>(value.toDegrees())) + "°";
    else if constexpr (requires {
                           value.size();
                           value.begin();
                       })
        return std::to_string(value.size());
    else
        return jsonText(toJson(value));
}

} // namespace miterbook
