// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace miterbook {

/// What stands by every number that somebody is paid by.
constexpr std::string_view payrollCaution() {
    return "Before taxes and deductions. Overtime, piece pay, travel and minimum wage are ruled by "
           "federal and state law and differ by state; have a licensed professional confirm how "
           "you pay.";
}

} // namespace miterbook
