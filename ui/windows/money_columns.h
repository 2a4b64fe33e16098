// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/column.h"
#include "windows/money_desk.h"

#include <span>

namespace miterbook {

std::span<const Column<AgingRow>> agingColumns();
std::span<const Column<ToBillRow>> toBillColumns();

} // namespace miterbook
