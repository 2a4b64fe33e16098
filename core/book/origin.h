// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"

namespace miterbook {

/// Where a value of the book came from. A starter is common practice to be checked by the shop.
enum class Origin { starter, shop, learned };

template <>
struct Words<Origin> {
    static constexpr std::array list{
        Word{Origin::starter, "starter"},
        Word{Origin::shop, "yours"},
        Word{Origin::learned, "learned"},
    };
};

} // namespace miterbook
