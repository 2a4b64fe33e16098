// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/row_steps.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

using Keys = std::vector<std::int64_t>;

/// Does the steps one by one, as a model does.
Keys walked(Keys keys, const Keys& to, const RowSteps& steps) {
    for (const RowRange& range : steps.removals)
        keys.erase(keys.begin() + range.first, keys.begin() + range.first + range.count);
    for (const RowRange& range : steps.insertions)
        keys.insert(keys.begin() + range.first, to.begin() + range.first,
            to.begin() + range.first + range.count);
    return keys;
}

TEST(RowSteps, NothingToDoForEqualLists) {
    const RowSteps steps = rowSteps({1, 2, 3}, {1, 2, 3});
    EXPECT_TRUE(steps.removals.empty());
    EXPECT_TRUE(steps.insertions.empty());
    EXPECT_FALSE(steps.reordered);
}

TEST(RowSteps, NeighboursGoTogether) {
    const RowSteps steps = rowSteps({1, 2, 3, 4}, {1, 4, 5, 6});
    EXPECT_EQ(steps.removals, (std::vector<RowRange>{{1, 2}}));
    EXPECT_EQ(steps.insertions, (std::vector<RowRange>{{2, 2}}));
}

TEST(RowSteps, AnotherOrderIsSaid) {
    EXPECT_TRUE(rowSteps({1, 2, 3}, {2, 1, 3}).reordered);
    EXPECT_TRUE(rowSteps({1, 2, 3}, {3, 4, 1}).reordered);
}

TEST(RowSteps, LeadFromAnyListToAnyOtherInOrder) {
    std::mt19937 random(7);
    for (int round = 0; round < 500; ++round) {
        Keys from;
        Keys to;
        for (std::int64_t key = 0; key < 20; ++key) {
            const auto dice = random() % 4;
            if (dice != 0)
                from.push_back(key);
            if (dice != 1)
                to.push_back(key);
        }
        const RowSteps steps = rowSteps(from, to);
        EXPECT_FALSE(steps.reordered);
        EXPECT_EQ(walked(from, to, steps), to);
    }
}

} // namespace
} // namespace miterbook
