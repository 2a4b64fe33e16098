// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/solve.h"

#include "packing/coarse.h"
#include "packing/consolidate.h"
#include "packing/instance.h"
#include "packing/quick.h"
#include "packing/search.h"
#include "packing/tidiest.h"

namespace miterbook::packing {

namespace {

constexpr std::int64_t quickWork = 5000;
constexpr std::int64_t tidyWork = 5000;
constexpr std::int64_t tidiestWork = 5'000; // of the budget, once the cost is proven

Solution solutionOf(const Instance& instance, const Packing& packing, std::int64_t bound) {
    Solution solution;
    solution.plan = instance.plan(packing);
    if (packing.missingWidth == 0)
        solution.bound = bound < packing.cost ? bound : packing.cost;
    solution.proven = solution.plan.complete() && solution.bound == packing.cost;
    return solution;
}

} // namespace

Solution quickPlan(const Problem& problem) {
    if (auto sentence = refusal(problem))
        return {*sentence, {}, 0, false, 0};
    const Instance instance(problem);
    Budget budget(quickWork);
    Solution solution = solutionOf(instance, quickPacking(instance, budget), simpleBound(instance));
    solution.work = budget.spent();
    return solution;
}

Solution solve(const Problem& problem, Budget& budget, const Progress& progress) {
    if (auto sentence = refusal(problem))
        return {*sentence, {}, 0, false, 0};
    const Instance instance(problem);
    Incumbent incumbent(instance, progress);
    incumbent.raiseBound(simpleBound(instance));
    incumbent.offer(quickPacking(instance, budget));
    if (tooManyWidths(instance))
        searchCoarsely(instance, incumbent, budget);
    if (!incumbent.proven() && !budget.exhausted() && !hopelesslyManyWidths(instance))
        Search(instance, incumbent, budget).run();
    Budget last(tidyWork); // a few milliseconds that are spent even when the budget is used up
    incumbent.offer(Consolidation(instance, incumbent.packing(), last).run());
    if (incumbent.proven() && !budget.exhausted() && Tidiest::hopeful(instance)) {
        Budget some = budget.part(tidiestWork);
        Tidiest(instance, incumbent, some).run();
    }
    Solution solution = solutionOf(instance, incumbent.packing(), incumbent.bound());
    solution.work = budget.spent();
    return solution;
}

} // namespace miterbook::packing
