// SPDX-License-Identifier: GPL-3.0-or-later
// The problem as the algorithms see it: kerf and trim folded in, common factors divided out,
// equal lengths merged, hopeless pieces and useless sticks set aside.
#pragma once

#include "packing/plan.h"
#include "packing/problem.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace miterbook::packing {

using Counts = std::vector<std::int64_t>; // one number per kind of piece

// A kind of stick: pieces of total width up to capacity fit.
struct Bin {
    std::int64_t capacity = 0;
    std::int64_t price = 0;
    std::int64_t available = 0; // never more than pieces wanted
    bool limited = false;
    std::size_t origin = 0; // index into Problem::sticks
};

// What is cut from one stick: (kind of piece, how many), kinds ascending.
struct Column {
    std::size_t bin = 0;
    std::vector<std::pair<int, std::int64_t>> cuts;
    std::int64_t cost = 0;
    bool operator==(const Column&) const = default;
};

// A whole answer in these terms.
struct Packing {
    std::vector<std::pair<Column, std::int64_t>> columns; // with times
    Counts missing;                                       // empty: nothing
    std::int64_t cost = 0;
    std::int64_t missingWidth = 0;
};

class Instance {
public:
    explicit Instance(const Problem& problem);

    std::size_t kinds() const { return m_widths.size(); }
    const Counts& widths() const { return m_widths; } // strictly descending
    const Counts& demand() const { return m_demand; }
    const std::vector<Bin>& bins() const { return m_bins; } // longest first
    std::int64_t longestCapacity() const { return m_bins.empty() ? 0 : m_bins.front().capacity; }
    std::int64_t priceStep() const { return m_priceStep; } // every cost is a multiple, 0: all free
    bool salvages() const { return m_problem->salvage.cents > 0; }

    // Cents for a stick of this kind with pieces of this total width cut from it.
    std::int64_t cost(std::size_t bin, std::int64_t usedWidth) const;
    std::int64_t width(const Column& column) const;
    // What is left of its stick, in the caller's units; one kerf below zero when it ends flush.
    std::int64_t remainder(const Column& column) const;
    Plan plan(const Packing& packing) const;

private:
    void addPieces();
    void addBins();
    bool dominated(const Bin& bin) const;

    const Problem* m_problem;
    Counts m_widths;
    Counts m_demand;
    std::vector<Bin> m_bins;
    std::vector<std::vector<std::size_t>> m_origins; // per kind, indices into Problem::pieces
    std::vector<Share> m_hopeless;                   // longer than every stick
    std::int64_t m_factor = 1;                       // one unit of width in the caller's units
    std::int64_t m_priceStep = 0;
};

} // namespace miterbook::packing
