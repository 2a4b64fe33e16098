// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/families.h"

namespace miterbook::packing {

namespace {

const std::string own = MITERBOOK_SOURCE_DIR "/tests/core/packing/data/";

std::vector<Job> some(const std::string& file, std::size_t count) {
    std::vector<Job> jobs = readJobs(own + file);
    if (jobs.size() > count)
        jobs.resize(count);
    return jobs;
}

std::vector<Job> houses(std::initializer_list<const char*> names) {
    std::vector<Job> jobs;
    for (const char* name : names)
        for (Job& job : readJobs(own + "trim-house/" + name + ".txt"))
            jobs.push_back(std::move(job));
    return jobs;
}

} // namespace

std::vector<WorkFamily> workFamilies() {
    return {
        {"tiny", 100'000, some("tiny.txt", 100)},
        {"one-price", 100'000, houses({"base_lin_new_00", "crown_lin_new_00"})},
        {"prices-vary", 60'000, houses({"base_prem_off_01", "multi_rand_off_05"})},
        {"uniform-bins", 60'000, some("binpack1.txt", 5)},
        {"triplet-bins", 60'000, some("binpack5.txt", 3)},
        {"growth-5000", 60'000, {{"growth", growthJob(5'000, 200), std::nullopt}}},
        {"many-lengths", 60'000, {{"many", growthJob(5'000, 1500), std::nullopt}}},
    };
}

} // namespace miterbook::packing
