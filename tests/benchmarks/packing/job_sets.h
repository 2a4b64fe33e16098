// SPDX-License-Identifier: GPL-3.0-or-later
// The cutting jobs that are measured, in sets.
#pragma once

#include "core/packing/job_files.h"

#include <cstdint>
#include <string>
#include <vector>

namespace miterbook::packing {

struct JobSet {
    std::string name;
    double seconds = 1; // for each job
    std::vector<Job> jobs;
};

// The folder with the large sets: the one given, else $MITERBOOK_PACKING_DATA, else
// shared/data/packing beside the project, else the project's own small copy.
std::string dataFolder(const std::string& given);

// tiny, trim-house by pricing and time limit and with offcuts that count, and binpack1 to 5, as far
// as the folder has them.
std::vector<JobSet> publishedSets(const std::string& folder);

// Made here with a fixed seed: triplets that fill bins exactly (as E. Falkenauer describes them,
// Journal of Heuristics 2, 1996), items from ranges of a bin (as A. Scholl, R. Klein and C.
// Juergens, Computers & Operations Research 24, 1997), and bins of a few large and medium items
// whose linear bound is often one short.
std::vector<JobSet> generatedSets(std::uint32_t seed);

// A subdivision's worth: so many pieces of so many different lengths from five stick lengths.
Problem growthJob(std::int64_t pieces, std::int64_t lengths);

} // namespace miterbook::packing
