// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/invoice.h"

#include <map>
#include <vector>

namespace miterbook {

/// How a house stands between the shop and its builder, tax aside:
/// billed + retained + unbilled = contract + extras.
struct HouseAccount {
    Money contract;
    Money extras;   ///< those agreed
    Money billed;   ///< asked for so far, before backcharges, with deposits used up
    Money retained; ///< held back and not released yet
    Money unbilled; ///< what is left of the lines of the schedule of values
    Money deposit;  ///< asked for ahead and not used up yet
    Money backcharged;
    Money tax;

    Money value() const { return contract + extras; }
    bool operator==(const HouseAccount&) const = default;
};

/// What has been billed on each line of the schedule of values, credit notes taken off.
std::map<ValueKey, Money> billedByLine(const std::vector<Bill>& bills);

/// The account of a house from its schedule of values and all its bills. `billed` comes from the
/// papers' totals, `unbilled` from their lines.
HouseAccount houseAccount(const std::vector<ValueLine>& schedule, const std::vector<Bill>& bills);

/// Retainage held, and deposits not used up, over all bills that count.
Money retainedOf(const std::vector<Bill>& bills);
Money depositOf(const std::vector<Bill>& bills);

/// A line of work that has earned more than was billed.
struct UnbilledWork {
    ValueKey key;
    std::string label;
    Money earned;
    Money billed;

    Money amount() const { return earned - billed; }
    bool operator==(const UnbilledWork&) const = default;
};

/// What could go on a bill today, in the order of the schedule.
std::vector<UnbilledWork> unbilledWork(const std::vector<ValueLine>& schedule,
    const std::vector<Bill>& bills, const std::vector<ValueProgress>& progress);

} // namespace miterbook
