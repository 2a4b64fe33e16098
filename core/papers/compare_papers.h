// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"
#include "papers/paper.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// A line that two papers have, or one of them: what it says there, and by how much its amount
/// moved.
struct PaperDifference {
    std::string part; ///< the table's or section's title; empty for what stands at the head
    std::string line;
    std::string before;          ///< empty: the line is new
    std::string after;           ///< empty: the line is gone
    std::optional<Money> change; ///< where the line is an amount; 0: unmoved
    bool total = false;

    bool changed() const { return before != after; }
    bool operator==(const PaperDifference&) const = default;
};

/// Two papers of a kind line by line: every line with an amount in the later paper's order, lines
/// that it no longer has after those of their table, and of words only what has changed.
std::vector<PaperDifference> comparePapers(const Paper& before, const Paper& after);

} // namespace miterbook
