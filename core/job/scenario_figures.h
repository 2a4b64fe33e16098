// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/risk.h"
#include "bid/stick_memory.h"
#include "job/figures.h"

#include <string>
#include <vector>

namespace miterbook {

/// A scenario that changes nothing of a bid yet: it says what the setup says.
Scenario scenarioFrom(const BidSetup& setup, std::string name);

/// The scenarios of a job, in the order they were made.
std::vector<Scenario> scenariosOf(const Book& book, Id<Plan> plan);

/// The figures of a job as they would be. `today` are its figures as they are: where a profile's
/// need stays the same, its sticks are cut as there at the scenario's prices; other profiles are
/// planned thoroughly, remembered in `memory`.
JobFigures figuresIf(const Book& book, Id<Plan> plan, const Selection& selection,
    const Scenario& scenario, const JobFigures& today, StickMemory& memory);

/// What a bid comes to, for setting several side by side.
struct BidOutcome {
    std::string name;
    Money price;
    Money cost;
    Money profit;
    Hours hours;
    Percent margin;
    double chanceOfProfit = 0; ///< 0 to 1; meaningless without hours
    double chanceOfTarget = 0;
    double breakEvenHours = 0; ///< hours at which the price is used up

    bool operator==(const BidOutcome&) const = default;
};

BidOutcome outcomeOf(std::string name, const Estimate& estimate, const RiskBelief& belief);

} // namespace miterbook
