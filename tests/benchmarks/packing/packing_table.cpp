// SPDX-License-Identifier: GPL-3.0-or-later
// Solves every cutting job below the given files and folders and prints one table.
//
// packing_table [--seconds S] [--cpu] [--work N] [--brief] PATH...
//   --seconds  wall limit for each job (1)      --cpu   count this thread's time instead
//   --work     work limit for each job, no clock --brief only the summary
#include "core/packing/job_files.h"
#include "packing/check.h"
#include "packing/solve.h"

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <map>

using namespace miterbook::packing;

namespace {

struct Options {
    double seconds = 1;
    std::int64_t work = Budget::noLimit;
    bool cpu = false;
    bool brief = false;
    std::vector<std::string> paths;
};

double now(bool cpu) {
    timespec time{};
    clock_gettime(cpu ? CLOCK_THREAD_CPUTIME_ID : CLOCK_MONOTONIC, &time);
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) * 1e-9;
}

Options parse(int argc, char** argv) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--seconds" && i + 1 < argc)
            options.seconds = std::atof(argv[++i]);
        else if (word == "--work" && i + 1 < argc)
            options.work = std::atoll(argv[++i]);
        else if (word == "--cpu")
            options.cpu = true;
        else if (word == "--brief")
            options.brief = true;
        else
            options.paths.push_back(word);
    }
    return options;
}

std::vector<Job> collect(const std::vector<std::string>& paths) {
    std::vector<std::string> files;
    for (const std::string& path : paths) {
        if (!std::filesystem::is_directory(path)) {
            files.push_back(path);
            continue;
        }
        for (const auto& entry : std::filesystem::recursive_directory_iterator(path))
            if (entry.is_regular_file() && entry.path().extension() == ".txt")
                files.push_back(entry.path().string());
    }
    std::sort(files.begin(), files.end());
    std::vector<Job> jobs;
    for (const std::string& file : files)
        for (Job& job : readJobs(file))
            jobs.push_back(std::move(job));
    return jobs;
}

// trim-house names are family_pricing_stock_number; others count by their letters.
std::string family(const std::string& name) {
    if (std::count(name.begin(), name.end(), '_') == 3)
        return name.substr(0, name.rfind('_', name.rfind('_') - 1));
    return name.substr(0, std::min(name.find('_'), name.find_first_of("0123456789")));
}

struct Sum {
    int jobs = 0, faulty = 0, proven = 0, best = 0, withinStick = 0;
    double gap = 0, time = 0, longest = 0;

    void print(const std::string& name) const {
        std::printf("%-14s %4d jobs %3d faulty %4d proven %4d best known %4d within a stick"
                    "  mean gap %.5f %%  mean %.3f s  longest %.3f s\n",
            name.c_str(), jobs, faulty, proven, best, withinStick, gap / jobs, time / jobs,
            longest);
    }
};

std::int64_t cheapestStick(const Problem& problem) {
    std::int64_t cheapest = 0;
    for (const Stick& stick : problem.sticks)
        if (stick.price > 0 && (cheapest == 0 || stick.price < cheapest))
            cheapest = stick.price;
    return cheapest;
}

void run(const Job& job, const Options& options, std::map<std::string, Sum>& sums) {
    const double start = now(options.cpu);
    Budget budget(
        options.work, options.work != Budget::noLimit ? Budget::Stop{} : [&] {
            return now(options.cpu) - start > options.seconds;
        });
    double bestAt = 0;
    std::int64_t best = -1;
    const Solution solution = solve(job.problem, budget, [&](const Plan& plan, std::int64_t) {
        if (plan.cost != best)
            bestAt = now(options.cpu) - start;
        best = plan.cost;
    });
    const double time = now(options.cpu) - start;
    const auto sentence = fault(job.problem, solution.plan);
    const bool faulty = sentence || !solution.ok() || solution.bound > solution.plan.cost
        || (job.best && solution.bound > *job.best);
    const std::int64_t gap = solution.plan.cost - solution.bound;
    for (const std::string& name : {family(job.name), std::string("~ all")}) {
        Sum& sum = sums[name];
        sum.jobs += 1;
        sum.faulty += faulty ? 1 : 0;
        sum.proven += solution.proven ? 1 : 0;
        sum.best += job.best && solution.plan.cost == *job.best ? 1 : 0;
        sum.withinStick += gap < cheapestStick(job.problem) ? 1 : 0;
        sum.gap += 100.0 * static_cast<double>(gap)
            / static_cast<double>(std::max<std::int64_t>(solution.plan.cost, 1));
        sum.time += time;
        sum.longest = std::max(sum.longest, time);
    }
    if (!options.brief || faulty)
        std::printf("%-22s cost %9lld bound %9lld gap %6lld %-7s patterns %zu"
                    " best at %.3f s of %.3f s work %lld %s\n",
            job.name.c_str(), static_cast<long long>(solution.plan.cost),
            static_cast<long long>(solution.bound), static_cast<long long>(gap),
            solution.proven ? "proven" : "", solution.plan.patterns.size(), bestAt, time,
            static_cast<long long>(solution.work),
            faulty ? sentence.value_or("FAULTY BOUND").c_str() : "");
}

} // namespace

int main(int argc, char** argv) {
    const Options options = parse(argc, argv);
    std::map<std::string, Sum> sums;
    for (const Job& job : collect(options.paths))
        run(job, options, sums);
    for (const auto& [name, sum] : sums)
        sum.print(name);
    return sums.empty() || sums["~ all"].faulty > 0 ? 1 : 0;
}
