// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/dive.h"
#include "packing/exhaust.h"
#include "packing/mend.h"

#include <queue>

namespace miterbook::packing {

// The whole search: bound at the root, dives, then branching on the numbers of sticks. These
// numbers alone make the cost, so a leaf that fixes them all knows its cost exactly.
class Search {
public:
    enum class Depth { plain, mending };
    // Plain: plans are not mended, for parts of a plan that are searched themselves.
    Search(const Instance& instance, Incumbent& incumbent, Budget& budget,
        Depth depth = Depth::mending);
    void run();
    // Parts of it: the bound of the linear program; that and plans rounded from it. False when
    // the program was not solved.
    bool bound();
    bool dive();

private:
    struct Node {
        std::int64_t bound = 0;
        std::int64_t number = 0; // later ones first among equals
        StickLimits limits;
        bool operator<(const Node& other) const { // for the queue: the largest comes out first
            return bound != other.bound ? bound > other.bound : number < other.number;
        }
    };

    StickLimits rootLimits() const;
    void mend(std::int64_t work);
    void branch();
    void process(Node node);
    void diveAtLeaves(int discrepancies);
    void closeLeaves(std::int64_t work);
    std::int64_t openBound() const;
    int fractionalBin(const std::vector<double>& sticks, const StickLimits& limits) const;
    void split(const Node& node, std::size_t bin, double value);
    bool splitAround(const Node& node, const std::vector<double>& sticks);
    void push(const Node& parent, const StickLimits& limits);

    const Instance& m_instance;
    Incumbent& m_incumbent;
    Budget& m_budget;
    Master m_master;
    Dive m_dive;
    Exhaust m_exhaust;
    Mend m_mend;
    Depth m_depth;
    std::priority_queue<Node> m_open;
    std::vector<Node> m_unresolved;
    std::int64_t m_numbers = 0;
    Duals m_rootDuals;
    double m_rootObjective = 0;
};

} // namespace miterbook::packing
