// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/measure.h"

#include "benchmarks/packing/by_hand.h"
#include "packing/check.h"
#include "packing/solve.h"

#include <algorithm>
#include <ctime>

namespace miterbook::packing {

namespace {

constexpr double lateAfter = 0.05; // seconds over the limit that count as an overrun

double now(clockid_t clock) {
    timespec time{};
    clock_gettime(clock, &time);
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) * 1e-9;
}

std::int64_t cheapestStick(const Problem& problem) {
    std::int64_t cheapest = 0;
    for (const Stick& stick : problem.sticks)
        if (stick.price > 0 && (cheapest == 0 || stick.price < cheapest))
            cheapest = stick.price;
    return cheapest;
}

std::string faultOf(const Job& job, const Solution& solution) {
    if (!solution.ok())
        return solution.error;
    if (auto sentence = fault(job.problem, solution.plan))
        return *sentence;
    if (solution.bound > solution.plan.cost)
        return "The bound is above the cost.";
    if (job.best && solution.bound > *job.best)
        return "The bound is above a plan that is known.";
    return {};
}

double percentOver(std::int64_t cost, std::int64_t base) {
    return base <= 0 ? 0 : 100.0 * static_cast<double>(cost - base) / static_cast<double>(base);
}

} // namespace

Measured measured(const Job& job, double seconds, Clocks clocks) {
    const clockid_t clock = clocks == Clocks::wall ? CLOCK_MONOTONIC : CLOCK_THREAD_CPUTIME_ID;
    const double wall = now(CLOCK_MONOTONIC);
    const double cpu = now(CLOCK_THREAD_CPUTIME_ID);
    const double end = now(clock) + seconds;
    Budget budget(Budget::noLimit, [&] { return now(clock) >= end; });
    Measured result{solve(job.problem, budget), 0, 0, {}};
    result.wall = now(CLOCK_MONOTONIC) - wall;
    result.cpu = now(CLOCK_THREAD_CPUTIME_ID) - cpu;
    result.fault = faultOf(job, result.solution);
    return result;
}

void SetSums::add(const Job& job, const Measured& m, double seconds, Clocks clocks) {
    const std::int64_t cost = m.solution.plan.cost;
    const double took = clocks == Clocks::wall ? m.wall : m.cpu;
    ++jobs;
    faulty += m.fault.empty() ? 0 : 1;
    proven += m.solution.proven ? 1 : 0;
    known += job.best ? 1 : 0;
    best += job.best && cost <= *job.best ? 1 : 0;
    withinStick += cost - m.solution.bound < cheapestStick(job.problem) ? 1 : 0;
    late += took > seconds + lateAfter ? 1 : 0;
    gap += percentOver(cost, m.solution.bound);
    time += took;
    longest = std::max(longest, took);
    firstFit += percentOver(packing::firstFit(job.problem).cost, cost);
    percentage += percentOver(byPercentage(job.problem, 10), cost);
}

} // namespace miterbook::packing
