// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

namespace miterbook {

/// Where a batch command prints: standard output and error in the program, strings in tests.
struct Console {
    std::ostream& out;
    std::ostream& err;
};

} // namespace miterbook
