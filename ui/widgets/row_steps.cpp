// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/row_steps.h"

#include <algorithm>
#include <unordered_set>

namespace miterbook {

namespace {

using Keys = std::vector<std::int64_t>;
using KeySet = std::unordered_set<std::int64_t>;

/// Runs of keys that are not in `kept`, by position.
std::vector<RowRange> runsOutside(const Keys& keys, const KeySet& kept) {
    std::vector<RowRange> runs;
    for (int i = 0; i < static_cast<int>(keys.size()); ++i) {
        if (kept.contains(keys[static_cast<std::size_t>(i)]))
            continue;
        if (!runs.empty() && runs.back().first + runs.back().count == i)
            ++runs.back().count;
        else
            runs.push_back({i, 1});
    }
    return runs;
}

Keys inside(const Keys& keys, const KeySet& kept) {
    Keys list;
    std::ranges::copy_if(
        keys, std::back_inserter(list), [&](std::int64_t key) { return kept.contains(key); });
    return list;
}

} // namespace

RowSteps rowSteps(const Keys& from, const Keys& to) {
    const KeySet before(from.begin(), from.end());
    const KeySet after(to.begin(), to.end());
    RowSteps steps;
    steps.removals = runsOutside(from, after);
    std::ranges::reverse(steps.removals);
    steps.insertions = runsOutside(to, before);
    steps.reordered = inside(from, after) != inside(to, before);
    return steps;
}

} // namespace miterbook
