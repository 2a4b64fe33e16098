// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "benchmarks/packing/job_sets.h"

namespace miterbook::packing {

// A sample plan of sample-jobs as one cutting job for each profile, at the starter book's prices.
struct House {
    std::string name;
    std::vector<Job> profiles;
};

std::vector<House> sampleHouses();

} // namespace miterbook::packing
