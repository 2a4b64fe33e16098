// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"

#include <string>
#include <string_view>

namespace miterbook {

/// A length without any rounding, as short as it goes: `35 1/2` where 1/64 in is exact, `902.5mm`
/// where 0.1 mm is, else nanometres: `7nm`.
std::string exactLengthText(Length length);

/// Reads what exactLengthText writes, and a length in any form of the trade, `2-8` included; bare
/// numbers are inches. Errors: one sentence quoting the text.
Result<Length> readExactLength(std::string_view text);

} // namespace miterbook
