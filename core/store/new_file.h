// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <functional>
#include <string>

namespace miterbook {

/// Makes a file that is either whole or not there: `fill` writes PATH.part, which is synced and
/// then gets its name. Errors: Fault::storage when `path` exists already or its folder cannot be
/// written; what `fill` says.
Result<void> makeNewFile(
    const std::string& path, const std::function<Result<void>(const std::string& part)>& fill);

} // namespace miterbook
