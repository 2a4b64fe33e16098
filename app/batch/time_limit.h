// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"

#include <chrono>

namespace miterbook {

/// A packing budget that ends when so many seconds of the wall clock have passed since it was made.
inline packing::Budget secondsFromNow(double seconds) {
    using Clock = std::chrono::steady_clock;
    const auto end = Clock::now()
        + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(seconds));
    return packing::Budget(packing::Budget::noLimit, [end] { return Clock::now() >= end; });
}

} // namespace miterbook
