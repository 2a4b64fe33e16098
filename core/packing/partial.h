// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/pricer.h"

namespace miterbook::packing {

// A plan half made: what has been settled, what is still wanted and may still be used.
struct Partial {
    Counts demand;
    StickLimits limits;
    Packing fixed;

    bool done() const;
    // How often the column can be used without cutting more than is wanted.
    std::int64_t repeats(const Column& column) const;
    void take(const Column& column, std::int64_t times);
    // The column without pieces that are no longer wanted.
    Column trimmed(const Instance& instance, const Column& column) const;
};

} // namespace miterbook::packing
