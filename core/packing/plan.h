// SPDX-License-Identifier: GPL-3.0-or-later
// What comes out: how many sticks of each kind, and how each is cut.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace miterbook::packing {

// count pieces of Problem::pieces[piece].
struct Share {
    std::size_t piece = 0;
    std::int64_t count = 0;
    bool operator==(const Share&) const = default;
};

// times sticks of Problem::sticks[stick], all cut alike, longest piece first.
struct Pattern {
    std::size_t stick = 0;
    std::int64_t times = 0;
    std::vector<Share> shares;
    bool operator==(const Pattern&) const = default;
};

struct Plan {
    std::vector<Pattern> patterns;
    std::vector<Share> missing; // pieces that no stick is left for, or that fit on none
    std::int64_t cost = 0;      // cents: prices of the sticks less credited remainders
    bool complete() const { return missing.empty(); }
    bool operator==(const Plan&) const = default;
};

// bound: no plan that cuts all pieces but those too long for any stick is cheaper, in cents; 0
// when sticks ran out. proven: cost equals the cheapest there is and nothing is missing.
struct Solution {
    std::string error; // a sentence when the problem was refused, then nothing else is set
    Plan plan;
    std::int64_t bound = 0;
    bool proven = false;
    std::int64_t work = 0; // units spent
    bool ok() const { return error.empty(); }
};

// Called with each better plan or bound, on the thread that solves.
using Progress = std::function<void(const Plan& plan, std::int64_t bound)>;

} // namespace miterbook::packing
