// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"

#include <chrono>

namespace miterbook {

/// So many seconds of the wall clock for a whole command. They began when the program was started,
/// where the command is the first thing that it does, else when this was made.
class TimeLimit {
public:
    explicit TimeLimit(double seconds);

    /// A budget that ends so many seconds before the limit, but leaves half of the time at least.
    packing::Budget budgetBefore(double reserve) const;
    /// Seconds since the beginning.
    double passed() const;

private:
    using Clock = std::chrono::steady_clock;
    Clock::time_point m_begin;
    double m_seconds;
};

} // namespace miterbook
