// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/hours_reading.h"
#include "job/edit.h"

#include <functional>

namespace miterbook {

/// Brings the entries of some days into memory.
using OpenDays = std::function<Result<void>(Date first, Date last)>;

/// Reads a file of hours against the entries that the book has on its days; they are opened for it.
Result<HoursReading> readHoursAgainst(
    std::string_view bytes, const Book& book, Date today, const OpenDays& open);

/// The edit that brings the good rows in: "Bring in 12 entries of hours from week.csv".
Edit hoursEdit(
    const Book& book, IdSource& ids, const HoursReading& reading, const std::string& file);

} // namespace miterbook
