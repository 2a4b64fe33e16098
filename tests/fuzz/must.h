// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <cstdlib>

namespace miterbook::fuzz {

/// Ends the program when something does not hold, so that whoever feeds it notices.
inline void must(bool holds, const char* what) {
    if (holds)
        return;
    std::fprintf(stderr, "Does not hold: %s\n", what);
    std::abort();
}

} // namespace miterbook::fuzz
