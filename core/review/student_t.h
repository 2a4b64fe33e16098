// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace miterbook {

/// The t that Student's distribution exceeds with probability 1 - `below` (.95: the upper 5 %).
/// Degrees of freedom more than 0, need not be whole; `below` between 0 and 1.
double studentQuantile(double below, double freedom);

} // namespace miterbook
