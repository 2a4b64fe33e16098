// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace miterbook::packing {

// How one job of the growth table went, in a process of its own.
struct Growth {
    std::int64_t pieces = 0;
    std::int64_t lengths = 0;
    double quick = 0;   // seconds of CPU to the first plan
    double seconds = 0; // of CPU to the proof, or to the limit
    double gap = 0;     // per cent above the bound
    bool proven = false;
    double megabytes = 0; // most memory of the process

    bool ok() const { return seconds > 0; }
};

inline constexpr double growthSeconds = 5;

// Solves the job in this process and prints its figures for measuredApart to read.
void printGrowth(std::int64_t pieces, std::int64_t lengths);

// Runs `program --growth PIECES LENGTHS` and reads what it printed.
Growth measuredApart(const std::string& program, std::int64_t pieces, std::int64_t lengths);

// Time and memory against pieces, one line for each number of lengths, as an SVG picture.
std::string growthPicture(const std::vector<Growth>& all);

} // namespace miterbook::packing
