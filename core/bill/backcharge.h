// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/words.h"

#include <string>

namespace miterbook {

struct House;

/// What the shop says to a backcharge.
enum class BackchargeState { claimed, accepted, refused };

template <>
struct Words<BackchargeState> {
    static constexpr std::array list{
        Word{BackchargeState::claimed, "claimed"},
        Word{BackchargeState::accepted, "accepted"},
        Word{BackchargeState::refused, "refused"},
    };
};

/// What a builder takes off for damage or for work that others had to do. Once accepted it comes
/// off the next bill.
struct Backcharge {
    Id<Backcharge> id;
    Id<House> house;
    Date date = noDate;
    std::string reason;
    Money amount; ///< positive
    BackchargeState state = BackchargeState::claimed;

    bool operator==(const Backcharge&) const = default;
};

template <>
struct Describe<Backcharge> {
    static constexpr std::string_view table = "backcharge";
    static constexpr std::string_view noun = "backcharge";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Backcharge::id), field("house", &Backcharge::house),
            field("date", &Backcharge::date), field("reason", &Backcharge::reason),
            field("amount", &Backcharge::amount), field("state", &Backcharge::state));
    }
};

} // namespace miterbook
