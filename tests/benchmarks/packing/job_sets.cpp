// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/job_sets.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <set>

namespace miterbook::packing {

namespace {

namespace fs = std::filesystem;

constexpr const char* ownCopy = MITERBOOK_SOURCE_DIR "/tests/core/packing/data";

std::vector<Job> readAll(const std::vector<std::string>& files) {
    std::vector<Job> jobs;
    for (const std::string& file : files)
        for (Job& job : readJobs(file))
            jobs.push_back(std::move(job));
    return jobs;
}

// Files below a folder whose name holds one of the words, sorted.
std::vector<std::string> filesWith(
    const std::string& folder, const std::vector<std::string>& words) {
    std::vector<std::string> files;
    if (!fs::is_directory(folder))
        return files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        const bool wanted = std::any_of(words.begin(), words.end(),
            [&](const std::string& word) { return name.find(word) != std::string::npos; });
        if (entry.path().extension() == ".txt" && wanted)
            files.push_back(entry.path().string());
    }
    std::sort(files.begin(), files.end());
    return files;
}

// The best plan known of each trim-house job. Columns: file, pieces, distinct, lower, upper,
// proven.
std::map<std::string, std::int64_t> bestKnown(const std::string& file) {
    std::map<std::string, std::int64_t> best;
    std::ifstream in(file);
    std::string line;
    std::getline(in, line);
    std::string name;
    std::int64_t pieces = 0;
    std::int64_t distinct = 0;
    std::int64_t lower = 0;
    std::int64_t upper = 0;
    while (in >> name >> pieces >> distinct >> lower >> upper && std::getline(in, line))
        best[name.substr(0, name.find('.'))] = upper;
    return best;
}

std::vector<Job> houseJobs(const std::string& folder, const std::vector<std::string>& pricings) {
    const auto best = bestKnown(folder + "/trim-house-bounds.tsv");
    std::vector<Job> jobs = readAll(filesWith(folder + "/trim-house", pricings));
    for (Job& job : jobs)
        if (const auto it = best.find(job.name); it != best.end())
            job.best = it->second;
    return jobs;
}

// Every fourth job with offcuts of two feet and more counted at 30 % of the shortest stick by
// length, and those on the rack costing as much.
std::vector<Job> countingOffcuts(const std::vector<Job>& jobs) {
    constexpr std::int64_t twoFeet = 24 * 16;
    std::vector<Job> counting;
    for (std::size_t i = 0; i < jobs.size(); i += 4) {
        Job job = jobs[i];
        job.best.reset();
        Salvage& salvage = job.problem.salvage;
        const Stick& stick = job.problem.sticks.front();
        salvage = {twoFeet, stick.price * 3 / 10, stick.length};
        for (Stick& each : job.problem.sticks)
            if (each.available && each.length >= twoFeet)
                each.price = each.length * salvage.cents / salvage.perLength;
        counting.push_back(std::move(job));
    }
    return counting;
}

Problem bins(std::int64_t capacity, const std::vector<std::int64_t>& items) {
    Problem problem;
    problem.sticks = {{capacity, 1, std::nullopt}};
    for (const std::int64_t item : items)
        problem.pieces.push_back({item, 1});
    return problem;
}

class Generator {
public:
    explicit Generator(std::uint32_t seed)
        : m_random(seed) {}

    std::int64_t upTo(std::int64_t from, std::int64_t to) {
        return from
            + static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(to - from + 1));
    }

    // Each three fill a bin of 1000 to the last unit.
    Job triplets(int count, int number) {
        std::vector<std::int64_t> items;
        for (int i = 0; i < count; ++i) {
            const std::int64_t first = upTo(380, 490);
            const std::int64_t second = upTo(250, (1000 - first) / 2);
            items.insert(items.end(), {first, second, 1000 - first - second});
        }
        return {"triplets" + std::to_string(3 * count) + "_" + std::to_string(number),
            bins(1000, items), count};
    }

    Job ranges(std::int64_t capacity, std::int64_t from, std::int64_t to, int count, int number) {
        std::vector<std::int64_t> items;
        for (int i = 0; i < count; ++i)
            items.push_back(upTo(from, to));
        return {"ranges" + std::to_string(count) + "_" + std::to_string(number),
            bins(capacity, items), std::nullopt};
    }

private:
    std::mt19937_64 m_random;
};

} // namespace

std::string dataFolder(const std::string& given) {
    std::vector<std::string> tried{given};
    if (const char* named = std::getenv("MITERBOOK_PACKING_DATA"))
        tried.emplace_back(named);
    tried.emplace_back(MITERBOOK_SOURCE_DIR "/../shared/data/packing");
    for (const std::string& folder : tried)
        if (!folder.empty() && fs::is_directory(folder))
            return folder;
    return ownCopy;
}

std::vector<JobSet> publishedSets(const std::string& folder) {
    std::vector<JobSet> sets;
    sets.push_back({"tiny", 1, readAll(filesWith(folder, {"tiny"}))});
    sets.push_back({"house 0.25 s", 0.25, houseJobs(folder, {"_lin_", "_prem_", "_rand_"})});
    sets.push_back({"one price/ft", 0.25, houseJobs(folder, {"_lin_"})});
    sets.push_back({"prices vary", 1, houseJobs(folder, {"_prem_", "_rand_"})});
    sets.push_back({"offcuts count", 1, countingOffcuts(sets[1].jobs)});
    const std::string library = fs::is_directory(folder + "/orlib") ? folder + "/orlib" : folder;
    for (int i = 1; i <= 5; ++i) {
        const std::string name = "binpack" + std::to_string(i);
        sets.push_back({name, 1, readAll(filesWith(library, {name}))});
    }
    std::erase_if(sets, [](const JobSet& set) { return set.jobs.empty(); });
    return sets;
}

std::vector<JobSet> generatedSets(std::uint32_t seed) {
    Generator generator(seed);
    JobSet triplets{"triplets", 1, {}};
    JobSet ranges{"ranges", 1, {}};
    JobSet gaps{"few per bin", 1, {}};
    for (int i = 0; i < 20; ++i) {
        triplets.jobs.push_back(generator.triplets(i % 2 == 0 ? 40 : 83, i));
        ranges.jobs.push_back(generator.ranges(i % 2 == 0 ? 1000 : 100'000,
            i % 2 == 0 ? 150 : 20'000, i % 2 == 0 ? 450 : 35'000, i % 2 == 0 ? 200 : 120, i));
        gaps.jobs.push_back(generator.ranges(1000, 1, 800, 160, i));
    }
    return {std::move(triplets), std::move(ranges), std::move(gaps)};
}

Problem growthJob(std::int64_t pieces, std::int64_t lengths) {
    std::mt19937 random(static_cast<std::uint32_t>(pieces * 1000 + lengths));
    std::set<std::int64_t> wanted; // sixteenths, a kerf of 2 included
    while (static_cast<std::int64_t>(wanted.size()) < lengths)
        wanted.insert(80 + static_cast<std::int64_t>(random() % 2960));
    Problem problem;
    problem.sticks = {{1538, 736, std::nullopt}, {1922, 920, std::nullopt},
        {2306, 1104, std::nullopt}, {2690, 1325, std::nullopt}, {3074, 1555, std::nullopt}};
    for (const std::int64_t length : wanted)
        problem.pieces.push_back({length, 1});
    for (std::int64_t i = lengths; i < pieces; ++i)
        ++problem.pieces[random() % problem.pieces.size()].count;
    return problem;
}

} // namespace miterbook::packing
