// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_supply.h"

#include <deque>
#include <map>

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
    /// `most` plans are kept of one profile.
    explicit StickMemory(std::size_t most = 60)
        : m_most(most) {}

    /// The plan of a question; nullptr when there is none. Good until the next keep().
    const StickPlan* find(const StickQuestion& question) const;
    void keep(StickQuestion question, StickPlan plan);

private:
    std::size_t m_most;
    /// By profile, the latest first.
    std::map<Id<Profile>, std::deque<std::pair<StickQuestion, StickPlan>>> m_plans;
};

} // namespace miterbook
