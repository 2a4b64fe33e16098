// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_memory.h"
#include "job/figures.h"

#include <functional>
#include <string>
#include <vector>

namespace miterbook {

/// An option that a bid offers and does not hold: what it adds to the price, or takes off.
struct Alternate {
    Id<Variant> option;
    std::string name;
    Money change; ///< price(selection + option) - price(selection), of whole estimates

    bool operator==(const Alternate&) const = default;
};

/// The options of an opened builder's plan that are not selected, in the order they were made, each
/// priced by the difference of two whole estimates. `figures` are those of the selection with
/// thorough stick plans, which are taken over where an option leaves a profile alone. None where
/// the bid does not offer them, or on a house, which has no options of its own. `stop` ends early,
/// with what there is.
std::vector<Alternate> alternatesFor(const Book& book, Id<Plan> plan, const Selection& selection,
    const JobFigures& figures, const std::function<bool()>& stop = {});

} // namespace miterbook
