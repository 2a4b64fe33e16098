// SPDX-License-Identifier: GPL-3.0-or-later
// Solves all sets and prints one table; then what the sample houses save and how work grows.
//
// packing_runner [--data FOLDER] [--cpu] [--only SET] [--seed N] [--picture FILE.svg] [--brief]
//   --cpu    a job ends after so much time of its thread, for a machine that does other things too
//   --only   only the sets whose names begin so; "houses" and "growth" name the other two tables
//   --brief  without what is generated and without growth
#include "benchmarks/packing/by_hand.h"
#include "benchmarks/packing/growth.h"
#include "benchmarks/packing/houses.h"
#include "benchmarks/packing/measure.h"
#include "packing/check.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>

using namespace miterbook::packing;

namespace {

struct Options {
    std::string data;
    std::string only;
    std::string picture = "packing-growth.svg";
    std::uint32_t seed = 1;
    Clocks clocks = Clocks::wall;
    bool brief = false;

    bool wants(const std::string& name) const { return name.starts_with(only); }
};

Options parse(int argc, char** argv) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        const char* next = i + 1 < argc ? argv[i + 1] : "";
        if (word == "--cpu")
            options.clocks = Clocks::thread;
        else if (word == "--brief")
            options.brief = true;
        else if (word == "--data" && ++i)
            options.data = next;
        else if (word == "--only" && ++i)
            options.only = next;
        else if (word == "--picture" && ++i)
            options.picture = next;
        else if (word == "--seed" && ++i)
            options.seed = static_cast<std::uint32_t>(std::strtoul(next, nullptr, 10));
    }
    return options;
}

// False when a plan or bound was wrong.
bool runSet(const JobSet& set, const Options& options) {
    SetSums sums;
    for (const Job& job : set.jobs) {
        const Measured m = measured(job, set.seconds, options.clocks);
        if (!m.fault.empty())
            std::printf("%s: %s\n", job.name.c_str(), m.fault.c_str());
        sums.add(job, m, set.seconds, options.clocks);
    }
    const double jobs = sums.jobs;
    std::printf("%-13s %5.2f %4d %4d %5d %4d/%-4d %6d %9.5f %7.3f %7.3f %4d %8.1f %8.1f\n",
        set.name.c_str(), set.seconds, sums.jobs, sums.jobs - sums.faulty, sums.proven, sums.best,
        sums.known, sums.withinStick, sums.gap / jobs, sums.time / jobs, sums.longest, sums.late,
        sums.firstFit / jobs, sums.percentage / jobs);
    std::fflush(stdout);
    return sums.faulty == 0;
}

bool runSets(const Options& options) {
    const std::string folder = dataFolder(options.data);
    std::printf("Data: %s; times are %s.\n", folder.c_str(),
        options.clocks == Clocks::wall ? "of the wall" : "CPU times");
    std::printf("%-13s %5s %4s %4s %5s %9s %6s %9s %7s %7s %4s %8s %8s\n", "set", "limit", "jobs",
        "ok", "prov", "best/known", "<stick", "gap %", "mean s", "max s", "late", "FFD +%",
        "10% +%");
    std::vector<JobSet> sets = publishedSets(folder);
    if (!options.brief)
        for (JobSet& set : generatedSets(options.seed))
            sets.push_back(std::move(set));
    bool right = true;
    for (const JobSet& set : sets)
        if (options.wants(set.name))
            right = runSet(set, options) && right;
    return right;
}

void runHouses(const Options& options) {
    std::printf("\n%-12s %10s %10s %12s %12s %12s\n", "house", "dollars", "bound", "first fit +$",
        "10 % more +$", "seconds");
    for (const House& house : sampleHouses()) {
        std::int64_t cost = 0;
        std::int64_t bound = 0;
        std::int64_t byFit = 0;
        std::int64_t byPercent = 0;
        double seconds = 0;
        for (const Job& job : house.profiles) {
            const Measured m = measured(job, 1, options.clocks);
            cost += m.solution.plan.cost;
            bound += m.solution.bound;
            byFit += firstFit(job.problem).cost;
            byPercent += byPercentage(job.problem, 10);
            seconds += m.cpu;
        }
        const auto dollars = [](std::int64_t cents) { return static_cast<double>(cents) / 100; };
        std::printf("%-12s %10.2f %10.2f %12.2f %12.2f %12.3f\n", house.name.c_str(), dollars(cost),
            dollars(bound), dollars(byFit - cost), dollars(byPercent - cost), seconds);
    }
}

void runGrowth(const Options& options, const std::string& program) {
    std::printf("\n%8s %8s %9s %9s %10s %7s %8s\n", "pieces", "lengths", "first s", "CPU s",
        "gap %", "proven", "MB");
    std::vector<Growth> all;
    for (const std::int64_t lengths : {5, 50, 500})
        for (const std::int64_t pieces : {50, 500, 5'000, 50'000}) {
            if (pieces < lengths)
                continue;
            const Growth growth = measuredApart(program, pieces, lengths);
            std::printf("%8lld %8lld %9.4f %9.3f %10.5f %7s %8.1f\n",
                static_cast<long long>(pieces), static_cast<long long>(lengths), growth.quick,
                growth.seconds, growth.gap, growth.proven ? "yes" : "no", growth.megabytes);
            std::fflush(stdout);
            all.push_back(growth);
        }
    std::ofstream(options.picture) << growthPicture(all);
    std::printf("Picture: %s\n", options.picture.c_str());
}

} // namespace

int main(int argc, char** argv) {
    if (argc == 4 && std::string(argv[1]) == "--growth") {
        printGrowth(std::atoll(argv[2]), std::atoll(argv[3]));
        return 0;
    }
    const Options options = parse(argc, argv);
    const bool right = runSets(options);
    if (options.wants("houses"))
        runHouses(options);
    if (options.wants("growth") && !options.brief)
        runGrowth(options, argv[0]);
    return right ? 0 : 1;
}
