// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/bench.h"
#include "widgets/column.h"

#include <span>

namespace miterbook {

/// The settings of saw, bench, moisture and label sheet as one form.
std::span<const Column<Bench>> benchColumns();

} // namespace miterbook
