// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/dense_knapsack.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

using namespace miterbook::packing;

namespace {

using Cuts = DenseKnapsack<std::int64_t>::Cuts;

struct Case {
    Counts widths;
    std::vector<std::int64_t> values;
    Counts limits;
    std::int64_t capacity = 0;

    explicit Case(unsigned seed) {
        std::mt19937 random(seed);
        const auto upTo = [&](int from, int to) {
            return std::uniform_int_distribution<int>(from, to)(random);
        };
        capacity = upTo(10, 60);
        std::int64_t width = upTo(20, 50);
        for (int kind = upTo(1, 5); kind > 0 && width > 1; --kind, width -= upTo(1, 9)) {
            widths.push_back(width);
            values.push_back(upTo(0, 30));
            limits.push_back(upTo(0, 7));
        }
    }

    // Every choice that fits and leaves out worthless pieces, by value.
    std::multimap<std::int64_t, Cuts, std::greater<>> all(std::int64_t room) const {
        std::multimap<std::int64_t, Cuts, std::greater<>> found;
        Cuts cuts;
        add(0, room, 0, cuts, found);
        return found;
    }

private:
    void add(std::size_t kind, std::int64_t room, std::int64_t value, Cuts& cuts,
        std::multimap<std::int64_t, Cuts, std::greater<>>& found) const {
        if (kind == widths.size()) {
            found.emplace(value, cuts);
            return;
        }
        add(kind + 1, room, value, cuts, found);
        for (std::int64_t n = 1; values[kind] > 0 && n <= limits[kind] && n * widths[kind] <= room;
             ++n) {
            cuts.emplace_back(static_cast<int>(kind), n);
            add(kind + 1, room - n * widths[kind], value + n * values[kind], cuts, found);
            cuts.pop_back();
        }
    }
};

std::int64_t valueOf(const Case& example, const Cuts& cuts) {
    std::int64_t value = 0;
    for (const auto& [kind, count] : cuts)
        value += example.values[static_cast<std::size_t>(kind)] * count;
    return value;
}

TEST(DenseKnapsack, FindsTheBestForEveryCapacity) {
    for (unsigned seed = 0; seed < 150; ++seed) {
        const Case example(seed);
        DenseKnapsack<std::int64_t> knapsack(example.widths, example.capacity);
        Budget budget;
        ASSERT_TRUE(knapsack.run(example.values, example.limits, budget));
        for (std::int64_t room = 0; room <= example.capacity; ++room) {
            const auto all = example.all(room);
            EXPECT_EQ(knapsack.best(room), all.begin()->first) << seed << " at " << room;
            const Cuts cuts = knapsack.cuts(room);
            EXPECT_EQ(valueOf(example, cuts), all.begin()->first) << seed << " at " << room;
            std::int64_t width = 0;
            for (const auto& [kind, count] : cuts) {
                width += example.widths[static_cast<std::size_t>(kind)] * count;
                EXPECT_LE(count, example.limits[static_cast<std::size_t>(kind)]);
            }
            EXPECT_LE(width, room);
        }
    }
}

TEST(DenseKnapsack, BothNumberWidthsAgree) {
    for (unsigned seed = 500; seed < 540; ++seed) {
        const Case example(seed);
        DenseKnapsack<std::int64_t> wide(example.widths, example.capacity);
        DenseKnapsack<std::int32_t> narrow(example.widths, example.capacity);
        Budget budget;
        ASSERT_TRUE(wide.run(example.values, example.limits, budget));
        const std::vector<std::int32_t> values(example.values.begin(), example.values.end());
        ASSERT_TRUE(narrow.run(values, example.limits, budget));
        EXPECT_EQ(wide.best(example.capacity), narrow.best(example.capacity));
        EXPECT_EQ(wide.cuts(example.capacity), narrow.cuts(example.capacity));
    }
}

// Refusing one after the other brings all choices out in falling order of value.
TEST(DenseKnapsack, RefusedChoicesGiveWayToTheNextBest) {
    for (unsigned seed = 200; seed < 260; ++seed) {
        const Case example(seed);
        DenseKnapsack<std::int64_t> knapsack(example.widths, example.capacity);
        Budget budget;
        ASSERT_TRUE(knapsack.run(example.values, example.limits, budget));
        std::vector<Cuts> seen;
        const auto refused = [&](const Cuts& cuts) {
            return std::find(seen.begin(), seen.end(), cuts) != seen.end();
        };
        for (const auto& [value, cuts] : example.all(example.capacity)) {
            const auto next = knapsack.bestBut(example.capacity, refused, budget);
            ASSERT_TRUE(next) << seed;
            EXPECT_EQ(next->first, value) << seed;
            EXPECT_EQ(valueOf(example, next->second), value) << seed;
            EXPECT_FALSE(refused(next->second)) << seed;
            seen.push_back(next->second);
        }
        EXPECT_FALSE(knapsack.bestBut(example.capacity, refused, budget)) << seed;
    }
}

TEST(DenseKnapsack, StopsWithTheBudget) {
    const Counts widths{50, 40, 30};
    DenseKnapsack<std::int32_t> knapsack(widths, 100);
    Budget budget(2);
    EXPECT_FALSE(knapsack.run({5, 4, 3}, {1, 1, 1}, budget));
}

TEST(DenseKnapsack, PiecesWithoutWidthAreTakenUpToTheirLimit) {
    const Counts widths{10, 0};
    DenseKnapsack<std::int64_t> knapsack(widths, 15);
    Budget budget;
    ASSERT_TRUE(knapsack.run({7, 2}, {3, 5}, budget));
    EXPECT_EQ(knapsack.best(9), 10);
    EXPECT_EQ(knapsack.best(15), 17);
    EXPECT_EQ(knapsack.cuts(15), (Cuts{{0, 1}, {1, 5}}));
}

} // namespace
