// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/incumbent.h"

#include <optional>

namespace miterbook::packing {

// Stands in for an instance with very many different widths: neighbouring widths are taken as
// one, all as wide as the widest of them (then its answers fit the instance) or as the narrowest
// (then its bounds hold for the instance).
class Coarse {
public:
    enum class Rounding { up, down };
    Coarse(const Instance& instance, std::size_t groups, Rounding rounding);

    const Problem& problem() const { return m_problem; }
    // An answer to problem() in terms of the instance, whose columns each cut no more. Only when
    // widths were rounded up.
    Packing back(const Instance& coarse, const Packing& packing) const;

private:
    // Each group goes from one number to before the next; the last number ends the last group.
    std::vector<std::size_t> grouped(std::int64_t mostLost, Rounding rounding) const;
    Column dealt(const Instance& coarse, const Column& column, Counts& left) const;

    const Instance& m_instance;
    std::vector<std::size_t> m_starts;
    Problem m_problem;
};

// Better plans and bounds from ever finer stand-ins, for as long as that pays.
void searchCoarsely(const Instance& instance, Incumbent& incumbent, Budget& budget);

// So many different widths that the whole linear program would take too long to be worth it, or
// too much memory.
bool tooManyWidths(const Instance& instance);
bool hopelesslyManyWidths(const Instance& instance);

} // namespace miterbook::packing
