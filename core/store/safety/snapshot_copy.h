// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"

#include <functional>
#include <string>

namespace miterbook {

/// Asked between steps of long work; false stops it.
using GoOn = std::function<bool()>;

/// Copies the whole book page by page into a new file, letting writers through between its steps.
/// What is there at the end is the book as it was at one moment. Errors: Fault::cancelled, the
/// disk.
Result<void> copyInSteps(Connection& from, const std::string& to, const GoOn& goOn = {});

} // namespace miterbook
