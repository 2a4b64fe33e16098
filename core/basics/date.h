// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <chrono>
#include <string>
#include <string_view>

namespace miterbook {

/// A calendar day. A default-made Date (0000-00-00, not ok()) means "no date".
using Date = std::chrono::year_month_day;

inline constexpr Date noDate{};

/// `2026-11-25`, or empty for no date.
std::string isoDate(Date date);
/// Reads `2026-11-25`; empty text is no date. Errors: a sentence quoting the text.
Result<Date> parseIsoDate(std::string_view text);
/// As papers write it in the shop's country: `11/25/2026` (monthFirst) or `25 Nov 2026`.
std::string formatDate(Date date, bool monthFirst);
/// `date` plus a number of days (may be negative); no date stays no date.
Date addDays(Date date, int days);

} // namespace miterbook
