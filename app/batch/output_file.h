// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "batch/console.h"

#include <string>

namespace miterbook {

/// Writes text to a file, or to standard output for "-". The file is whole or not there at all.
/// Errors: a sentence naming the file.
Result<void> writeOutput(const std::string& path, const std::string& text, Console& console);

} // namespace miterbook
