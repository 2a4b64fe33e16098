// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/house_date.h"

namespace miterbook {

Result<void> checkHouseDate(const HouseDate& date) {
    constexpr int longest = 366; // days
    const std::string what = "The " + std::string(word(date.kind));
    if (!date.from.ok())
        return badInput(what + " needs a first day.");
    if (date.to.ok() && date.to < date.from)
        return badInput(what + " ends before it begins.");
    if (date.lastDay() > addDays(date.from, longest))
        return badInput(what + " takes more than a year.");
    return {};
}

} // namespace miterbook
