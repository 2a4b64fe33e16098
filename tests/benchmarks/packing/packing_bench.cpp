// SPDX-License-Identifier: GPL-3.0-or-later
// Times of each family with a fixed amount of work, and of the parts that take most of it.
#include "benchmarks/packing/by_hand.h"
#include "benchmarks/packing/families.h"
#include "packing/dense_knapsack.h"
#include "packing/solve.h"

#include <benchmark/benchmark.h>

using namespace miterbook::packing;

namespace {

void solveFamily(benchmark::State& state, const WorkFamily& family) {
    for (auto _ : state) {
        for (const Job& job : family.jobs) {
            Budget budget(family.work);
            benchmark::DoNotOptimize(solve(job.problem, budget).plan.cost);
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(family.jobs.size()));
}

void quickFamily(benchmark::State& state, const WorkFamily& family) {
    for (auto _ : state)
        for (const Job& job : family.jobs)
            benchmark::DoNotOptimize(quickPlan(job.problem).plan.cost);
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(family.jobs.size()));
}

void firstFitFamily(benchmark::State& state, const WorkFamily& family) {
    for (auto _ : state)
        for (const Job& job : family.jobs)
            benchmark::DoNotOptimize(firstFit(job.problem).cost);
}

void knapsack(benchmark::State& state) {
    const Problem problem = growthJob(5'000, state.range(0));
    const Instance instance(problem);
    DenseKnapsack<std::int32_t> table(instance.widths(), instance.longestCapacity());
    std::vector<std::int32_t> values;
    for (const std::int64_t width : instance.widths())
        values.push_back(static_cast<std::int32_t>(width * 1000 + width % 7));
    for (auto _ : state) {
        Budget budget;
        benchmark::DoNotOptimize(table.run(values, instance.demand(), budget));
    }
}
BENCHMARK(knapsack)->Arg(5)->Arg(50)->Arg(500);

} // namespace

int main(int argc, char** argv) {
    const std::vector<WorkFamily> families = workFamilies();
    for (const WorkFamily& family : families) {
        using benchmark::RegisterBenchmark;
        const auto named = [&](const char* what) { return what + ('/' + family.name); };
        RegisterBenchmark(named("solve").c_str(), solveFamily, family)
            ->Unit(benchmark::kMillisecond);
        RegisterBenchmark(named("quick").c_str(), quickFamily, family)
            ->Unit(benchmark::kMillisecond);
        RegisterBenchmark(named("first-fit").c_str(), firstFitFamily, family)
            ->Unit(benchmark::kMillisecond);
    }
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
