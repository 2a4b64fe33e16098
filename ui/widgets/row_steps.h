// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace miterbook {

/// Rows first..first+count-1.
struct RowRange {
    int first = 0;
    int count = 0;

    bool operator==(const RowRange&) const = default;
};

/// How a list of rows, known by their keys, becomes another: removals one after the other from the
/// end, then insertions from the front, each in the numbering of its own moment.
struct RowSteps {
    std::vector<RowRange> removals;
    std::vector<RowRange> insertions;
    /// Rows that stay have changed their order; then the steps do not lead from one to the other.
    bool reordered = false;
};

RowSteps rowSteps(const std::vector<std::int64_t>& from, const std::vector<std::int64_t>& to);

} // namespace miterbook
