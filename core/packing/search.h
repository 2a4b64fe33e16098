// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/dive.h"

namespace miterbook::packing {

// The whole search: bound at the root, dives, then branching on numbers of sticks.
class Search {
public:
    Search(const Instance& instance, Incumbent& incumbent, Budget& budget);
    void run();

private:
    StickLimits rootLimits() const;

    const Instance& m_instance;
    Incumbent& m_incumbent;
    Budget& m_budget;
    Master m_master;
};

} // namespace miterbook::packing
