// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/percent.h"

#include <QString>

#include <cstdint>
#include <optional>

namespace miterbook {

/// What is to become of many cells at once: each number made larger or smaller by a share of
/// itself, or one text put into all of them.
struct CellChange {
    std::optional<Percent> by;
    QString put; ///< where there is no `by`
};

/// "+3 %" and "-2.5%" change by a share; anything else is put as it is.
CellChange readCellChange(const QString& typed);

/// A number changed by a share of itself, rounded half away from zero.
std::int64_t changedBy(std::int64_t number, Percent by);

} // namespace miterbook
