// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/result.h"
#include "book/profile.h"
#include "book/task.h"
#include "book/terms.h"
#include "plan/plan.h"

#include <string>

namespace miterbook {

/// A named "what if" of one bid: what would be otherwise. The book itself stays as it is.
struct Scenario {
    Id<Scenario> id;
    Id<Plan> plan;
    std::string name;
    Percent wages = Percent::hundred();    ///< of what the crew is paid
    Percent material = Percent::hundred(); ///< of what sticks, parts and goods cost
    Percent minutes = Percent::hundred();  ///< of every labour rate
    Task task = Task::other;               ///< one rate of its own, where taskMinutes says how long
    MinutesPerUnit taskMinutes;            ///< 0: as in the book
    Id<Profile> profile;                   ///< used in place of `insteadOf`; none: as in the plan
    Id<Profile> insteadOf;
    ProfitKind profitKind = ProfitKind::markupOnCost;
    Percent profit = Percent::whole(20);
    Percent overhead = Percent::whole(10);

    bool operator==(const Scenario&) const = default;
};

template <>
struct Describe<Scenario> {
    static constexpr std::string_view table = "scenario";
    static constexpr std::string_view noun = "scenario";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Scenario::id), field("plan", &Scenario::plan),
            field("name", &Scenario::name), field("wages", &Scenario::wages),
            field("material", &Scenario::material), field("minutes", &Scenario::minutes),
            field("task", &Scenario::task), field("task_minutes", &Scenario::taskMinutes),
            field("profile", &Scenario::profile), field("instead_of", &Scenario::insteadOf),
            field("profit_kind", &Scenario::profitKind), field("profit", &Scenario::profit),
            field("overhead", &Scenario::overhead));
    }
};

/// Whether a scenario makes sense by itself.
Result<void> checkScenario(const Scenario& scenario);

} // namespace miterbook
