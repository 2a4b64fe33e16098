// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/bytes.h"
#include "basics/fields.h"
#include "basics/id.h"

#include <string>

namespace miterbook {

/// A picture for the shop's letterhead. It never changes: papers that were issued go on naming it
/// by its sum, whatever the shop takes instead.
struct Logo {
    static constexpr std::size_t mostBytes = 300'000;

    Id<Logo> id;
    std::string name; ///< of the file it came from
    std::string type; ///< "image/jpeg" or "image/png"
    std::string sum;  ///< SHA-256 of the content, in hexadecimal
    Bytes content;

    bool operator==(const Logo&) const = default;
};

template <>
struct Describe<Logo> {
    static constexpr std::string_view table = "logo";
    static constexpr std::string_view noun = "logo";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Logo::id), field("name", &Logo::name), field("type", &Logo::type),
            field("sum", &Logo::sum), field("content", &Logo::content));
    }
};

} // namespace miterbook
