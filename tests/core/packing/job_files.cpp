// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/job_files.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>

namespace miterbook::packing {

namespace {

constexpr std::int64_t anyNumber = 1'000'000; // how the files say unlimited

bool readBody(std::istream& in, Problem& problem) {
    std::size_t sticks = 0;
    std::size_t pieces = 0;
    if (!(in >> sticks))
        return false;
    for (std::size_t i = 0; i < sticks; ++i) {
        Stick stick;
        std::int64_t available = 0;
        in >> stick.length >> available >> stick.price;
        if (available < anyNumber)
            stick.available = available;
        problem.sticks.push_back(stick);
    }
    in >> pieces;
    for (std::size_t i = 0; i < pieces; ++i) {
        Piece piece;
        in >> piece.length >> piece.count;
        problem.pieces.push_back(piece);
    }
    return !in.fail();
}

std::vector<Job> readTiny(std::istream& in) {
    std::vector<Job> jobs;
    std::string name;
    std::int64_t best = 0;
    while (in >> name >> best) {
        Job job{name, {}, best};
        if (readBody(in, job.problem))
            jobs.push_back(std::move(job));
    }
    return jobs;
}

// Sizes carry at most one decimal; four published values are one too high.
std::vector<Job> readBins(std::istream& in) {
    constexpr const char* oneTooHigh[] = {"u120_08", "u120_19", "u250_07", "u250_12"};
    std::vector<Job> jobs;
    std::size_t count = 0;
    in >> count;
    for (std::size_t j = 0; j < count; ++j) {
        Job job;
        double capacity = 0;
        std::size_t items = 0;
        std::int64_t best = 0;
        if (!(in >> job.name >> capacity >> items >> best))
            break;
        for (const char* name : oneTooHigh)
            best -= job.name == name ? 1 : 0;
        job.best = best;
        job.problem.sticks.push_back({std::llround(capacity * 10), 1, std::nullopt});
        for (std::size_t i = 0; i < items; ++i) {
            double size = 0;
            in >> size;
            job.problem.pieces.push_back({std::llround(size * 10), 1});
        }
        jobs.push_back(std::move(job));
    }
    return jobs;
}

} // namespace

std::vector<Job> readJobs(const std::string& path) {
    std::ifstream in(path);
    const std::filesystem::path file(path);
    const std::string name = file.filename().string();
    if (name.starts_with("tiny"))
        return readTiny(in);
    if (name.starts_with("binpack"))
        return readBins(in);
    Job job{file.stem().string(), {}, std::nullopt};
    if (file.extension() != ".txt" || !readBody(in, job.problem))
        return {};
    return {job};
}

} // namespace miterbook::packing
