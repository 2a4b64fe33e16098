// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace miterbook {

/// value / 10^places as a plain decimal without a thousands mark, keeping at least `atLeast`
/// places: exactDecimal(1234500, 3, 0) is "1234.5". `places` from 0 to 18.
std::string exactDecimal(std::int64_t value, int places, int atLeast);

/// Whether a text is a number as JSON writes it (RFC 8259 section 6).
bool isJsonNumber(std::string_view text);

} // namespace miterbook
