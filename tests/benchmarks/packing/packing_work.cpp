// SPDX-License-Identifier: GPL-3.0-or-later
// packing_work NAME: solves one family within its work, for counting instructions. Without a name
// it lists the families.
#include "benchmarks/packing/families.h"
#include "packing/solve.h"

#include <cstdio>
#include <string>

using namespace miterbook::packing;

int main(int argc, char** argv) {
    for (const WorkFamily& family : workFamilies()) {
        if (argc < 2) {
            std::printf("%s\n", family.name.c_str());
            continue;
        }
        if (family.name != argv[1])
            continue;
        std::int64_t cost = 0;
        for (const Job& job : family.jobs) {
            Budget budget(family.work);
            cost += solve(job.problem, budget).plan.cost;
        }
        std::printf("%s: cost %lld\n", family.name.c_str(), static_cast<long long>(cost));
    }
    return 0;
}
