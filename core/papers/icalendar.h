// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/schedule.h"

#include <string>
#include <string_view>

namespace miterbook {

/// Dates of houses as a calendar (RFC 5545), one whole-day event for each; `stamp` is when it was
/// made, as the clock writes it (2026-11-25T08:00:00Z). A date keeps its identity when it is
/// exported again. Errors: there are no dates.
Result<std::string> calendarOf(
    const Book& book, const std::vector<HouseDate>& dates, std::string_view stamp);

/// A TEXT value: backslash, semicolon, comma and line breaks escaped (RFC 5545, 3.3.11).
std::string calendarText(std::string_view text);
/// A content line with its line break, folded so that no line is over 75 octets and no character is
/// parted (3.1).
std::string calendarLine(std::string_view line);

} // namespace miterbook
