// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"

#include <functional>
#include <string_view>

namespace miterbook {

/// Asked before each statement; when it says no, the statement fails as if the disk had refused it.
using Permit = std::function<bool(std::string_view sql)>;

/// What the store takes from outside. The clock must outlive the book.
struct StoreOptions {
    const Clock* clock = nullptr; ///< none: the machine's
    Permit permit;                ///< for tests of failure; empty: everything is permitted
};

/// The clock to go by.
const Clock& clockOf(const StoreOptions& options);

} // namespace miterbook
