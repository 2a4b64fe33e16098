// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the cutting jobs that tests and benchmarks use.
#pragma once

#include "packing/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace miterbook::packing {

struct Job {
    std::string name;
    Problem problem;
    std::optional<std::int64_t> best; // the optimum, or the best published number of bins
};

// Files of three kinds, told apart by their first line and name:
// trim-house job: k, k lines `length available price`, m, m lines `length count`, kerf included;
// tiny*.txt: many of those, each after a line `name optimum`, with a blank line between;
// binpack*.txt: P, then P times a name, `capacity n best` and n sizes.
// An unreadable file gives no jobs.
std::vector<Job> readJobs(const std::string& path);

} // namespace miterbook::packing
