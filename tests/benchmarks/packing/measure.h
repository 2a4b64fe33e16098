// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "benchmarks/packing/job_sets.h"
#include "packing/plan.h"

namespace miterbook::packing {

enum class Clocks {
    wall,
    thread
}; // which clock ends a job: that on the wall, or only this thread's

struct Measured {
    Solution solution;
    double wall = 0; // seconds
    double cpu = 0;
    std::string fault; // empty, or what the independent checker found
};

// Solves one job within the time and checks plan and bound.
Measured measured(const Job& job, double seconds, Clocks clocks);

// One line of the table.
struct SetSums {
    std::string name;
    int jobs = 0, faulty = 0, proven = 0, best = 0, known = 0, withinStick = 0, late = 0;
    double gap = 0, time = 0, longest = 0;
    double firstFit = 0, percentage = 0; // how much dearer, summed per cent

    void add(const Job& job, const Measured& m, double seconds, Clocks clocks);
};

} // namespace miterbook::packing
