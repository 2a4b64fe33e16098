// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"
#include "basics/result.h"
#include "book/price_book.h"
#include "takeoff/takeoff.h"

#include <functional>
#include <string>
#include <vector>

namespace miterbook {

/// One way of cutting one stick, `times` over.
struct CutPattern {
    Length stick;
    bool offcut = false; ///< out of the rack, not bought
    Money price;         ///< of one stick
    int times = 1;
    std::vector<Length> pieces; ///< long points, longest first

    bool operator==(const CutPattern&) const = default;
};

/// How the pieces of one profile come out of sticks.
struct StickPlan {
    Id<Profile> profile;
    std::vector<CutPattern> patterns;
    Money cost;          ///< of the sticks bought
    Money bound;         ///< no plan can cost less, what offcuts count for taken in
    bool proven = false; ///< cost is the least possible, likewise
    Length needed;       ///< running length of all pieces
    std::string problem; ///< empty, or a sentence: no stick priced, a piece too long

    bool operator==(const StickPlan&) const = default;
};

/// How hard to look for a plan.
enum class Effort {
    quick,   ///< a good plan in milliseconds
    thorough ///< a fixed amount of work, the same result every time
};

/// The stick plan of one profile's need. Kerf x sqrt 2 where pieces are mitered; offcuts in the
/// rack first. Never fails: what cannot be cut is said in `problem`. `stop` (may be empty) is asked
/// now and then whether to end early with the best so far.
StickPlan planSticks(const StickNeed& need, const PriceBook& prices, Effort effort,
    const std::function<bool()>& stop = {});

/// The plans of all needs, in the needs' order.
std::vector<StickPlan> planAllSticks(const std::vector<StickNeed>& needs, const PriceBook& prices,
    Effort effort, const std::function<bool()>& stop = {});

} // namespace miterbook
