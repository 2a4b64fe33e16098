// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "benchmarks/packing/job_sets.h"

namespace miterbook::packing {

// A few jobs of each kind from the project's own copy, and how much work each may take: enough to
// see a change, over soon even when every instruction is counted.
struct WorkFamily {
    std::string name;
    std::int64_t work = 0; // for each job, see Budget
    std::vector<Job> jobs;
};

std::vector<WorkFamily> workFamilies();

} // namespace miterbook::packing
