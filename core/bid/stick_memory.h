// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_supply.h"

#include <deque>

namespace miterbook {

/// All that a stick plan depends on; plans of equal questions are equal.
struct StickQuestion {
    StickNeed need;
    StickSupply supply;
    Practice practice;
    std::string name; ///< of the profile, for what a plan says in words
    LengthStyle lengths;

    bool operator==(const StickQuestion&) const = default;
};

StickQuestion stickQuestion(const StickNeed& need, const PriceBook& prices);

/// Settled stick plans, kept for as long as they are likely to be asked for again: undo, another
/// elevation, the profiles that a change has left alone.
class StickMemory {
public:
    /// The plan of a question; nullptr when there is none. Good until the next keep().
    const StickPlan* find(const StickQuestion& question) const;
    void keep(StickQuestion question, StickPlan plan);

private:
    static constexpr std::size_t most = 200;                 ///< some ten houses
    std::deque<std::pair<StickQuestion, StickPlan>> m_plans; ///< the latest first
};

} // namespace miterbook
