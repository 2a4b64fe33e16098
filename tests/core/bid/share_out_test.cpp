// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/share_out.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

std::vector<std::int64_t> cents(const std::vector<Money>& parts) {
    std::vector<std::int64_t> list;
    for (const Money part : parts)
        list.push_back(part.cents());
    return list;
}

std::vector<std::int64_t> shared(std::int64_t amount, const std::vector<std::int64_t>& weights) {
    return cents(shareOut(Money::cents(amount), weights));
}

using List = std::vector<std::int64_t>;

TEST(ShareOut, ExactSharesStayExact) {
    EXPECT_EQ(shared(1000, {1, 3, 6}), (List{100, 300, 600}));
}

TEST(ShareOut, TheLargestRemainderGetsTheCent) {
    // 100 by 1:1:4 is 16.67, 16.67, 66.67: two cents to spare, and a tie goes to the earlier.
    EXPECT_EQ(shared(100, {1, 1, 4}), (List{17, 17, 66}));
    // 10 by 3:5:9 is 1.76, 2.94, 5.29.
    EXPECT_EQ(shared(10, {3, 5, 9}), (List{2, 3, 5}));
}

TEST(ShareOut, TiesGoToTheEarlier) {
    EXPECT_EQ(shared(2, {1, 1, 1}), (List{1, 1, 0}));
}

TEST(ShareOut, WithoutWeightTheFirstTakesAll) {
    EXPECT_EQ(shared(77, {0, 0, 0}), (List{77, 0, 0}));
    EXPECT_EQ(shared(0, {}), List{});
}

TEST(ShareOut, NothingGoesWhereThereIsNoWeight) {
    EXPECT_EQ(shared(5, {0, 7, 0, 1}), (List{0, 4, 0, 1}));
}

TEST(ShareOut, ALossIsSharedAsAGainIs) {
    EXPECT_EQ(shared(-100, {1, 1, 4}), (List{-17, -17, -66}));
}

TEST(ShareOut, LongLengthsAsWeightsDoNotOverflow) {
    const std::int64_t mile = 1'609'344'000'000; // nanometres
    EXPECT_EQ(shared(1'000'000'000, {mile, mile * 3}), (List{250'000'000, 750'000'000}));
}

/// The parts add up, and none is a cent or more from its exact share.
TEST(ShareOut, RandomAmountsAddUp) {
    std::mt19937 random(20261);
    for (int round = 0; round < 2000; ++round) {
        List weights(1 + random() % 12);
        std::int64_t sum = 0;
        for (std::int64_t& weight : weights)
            sum += weight = random() % 3 == 0 ? 0 : static_cast<std::int64_t>(random() % 100'000);
        const auto amount = static_cast<std::int64_t>(random() % 2'000'001) - 1'000'000;
        const List parts = shared(amount, weights);
        std::int64_t total = 0;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            total += parts[i];
            if (sum > 0) {
                const std::int64_t off = parts[i] * sum - amount * weights[i];
                ASSERT_LT(std::abs(off), sum) << "round " << round;
            }
        }
        ASSERT_EQ(total, amount) << "round " << round;
    }
}

} // namespace
} // namespace miterbook
