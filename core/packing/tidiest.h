// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/incumbent.h"

namespace miterbook::packing {

// Tries every way of cutting everything at the incumbent's cost, which is the least there is:
// first with one pattern, then with two and so on, and offers the one with the longest single
// remainder among the fewest patterns. For a handful of different lengths; gives up when the
// budget ends.
class Tidiest {
public:
    Tidiest(const Instance& instance, Incumbent& incumbent, Budget& budget);
    void run();
    // Whether there are few enough pieces for it to come to an end.
    static bool hopeful(const Instance& instance);

private:
    struct State {
        Counts demand;
        Counts available;
        std::int64_t width = 0; // of all that is left
        Packing packing;
    };

    bool visit(State& state, std::size_t patterns);
    bool finish(State& state);
    void choose(State& state, std::size_t patterns, Column& column, std::int64_t times,
        std::size_t kind, std::int64_t room);
    bool take(State& state, std::size_t patterns, const Column& column, std::int64_t times);
    bool tooDear(const State& state) const;

    const Instance& m_instance;
    Incumbent& m_incumbent;
    Budget& m_budget;
    std::int64_t m_cost;
    bool m_found = false;
    int m_steps = 0;
};

} // namespace miterbook::packing
