// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/stop_groups.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace miterbook;

namespace {

constexpr Length sixteenth = Length::sixteenths(1);

std::vector<StopItem> lengths(const std::vector<int>& thirtySeconds) {
    std::vector<StopItem> items;
    for (const int n : thirtySeconds)
        items.push_back(StopItem::one(Length::thirtySeconds(n)));
    return items;
}

/// Whether one setting can serve all items of a mask, tried at every 1/64 in.
bool oneServes(const std::vector<StopItem>& items, unsigned mask, Length tolerance) {
    for (int n = 0; n < 400; ++n) {
        const Length setting = Length::sixtyFourths(n);
        bool all = true;
        for (std::size_t i = 0; i < items.size(); ++i) {
            if ((mask & (1U << i)) == 0)
                continue;
            all = all && setting >= items[i].most - tolerance
                && setting <= items[i].least + tolerance;
        }
        if (all)
            return true;
    }
    return false;
}

/// The fewest settings by trying every way of dividing the items.
std::size_t fewestByForce(const std::vector<StopItem>& items, Length tolerance) {
    const unsigned all = (1U << items.size()) - 1;
    std::vector<bool> served(all + 1);
    for (unsigned mask = 1; mask <= all; ++mask)
        served[mask] = oneServes(items, mask, tolerance);
    std::vector<std::size_t> fewest(all + 1, items.size() + 1);
    fewest[0] = 0;
    for (unsigned mask = 1; mask <= all; ++mask) {
        for (unsigned part = mask; part > 0; part = (part - 1) & mask) {
            if (served[part])
                fewest[mask] = std::min(fewest[mask], fewest[mask ^ part] + 1);
        }
    }
    return fewest[all];
}

} // namespace

TEST(StopGroups, AreTheFewestThereCanBe) {
    std::mt19937 random(20261125);
    for (int round = 0; round < 400; ++round) {
        std::vector<StopItem> items;
        for (unsigned i = 0, count = 1 + random() % 8; i < count; ++i) {
            const Length least = Length::thirtySeconds(32 + static_cast<int>(random() % 24));
            items.push_back({least, least + Length::thirtySeconds(static_cast<int>(random() % 3))});
        }
        const Length tolerance = Length::thirtySeconds(1 + static_cast<int>(random() % 3));
        const auto groups = groupStops(items, tolerance, Length::thirtySeconds(1));
        EXPECT_EQ(groups.size(), fewestByForce(items, tolerance)) << "round " << round;
    }
}

TEST(StopGroups, ServeEachItemOnceWithinTheTolerance) {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        std::vector<StopItem> items;
        for (int i = 0; i < 40; ++i)
            items.push_back(
                StopItem::one(Length::sixtyFourths(500 + static_cast<int>(random() % 200))));
        const auto groups = groupStops(items, sixteenth, Length::thirtySeconds(1));
        std::vector<int> served(items.size());
        for (const StopGroup& group : groups) {
            for (const std::size_t item : group.items) {
                ++served[item];
                EXPECT_LE(items[item].least - group.setting, sixteenth);
                EXPECT_LE(group.setting - items[item].most, sixteenth);
            }
        }
        EXPECT_EQ(std::ranges::count(served, 1), 40);
        EXPECT_TRUE(std::ranges::is_sorted(groups, std::ranges::greater(), &StopGroup::setting));
    }
}

TEST(StopGroups, AreNeverMoreThanTheDistinctLengths) {
    const auto groups = groupStops(lengths({1280, 1280, 1400, 1410, 1280}), Length(), Length());
    ASSERT_EQ(groups.size(), 3U);
    EXPECT_EQ(groups[2].setting, Length::thirtySeconds(1280));
    EXPECT_EQ(groups[2].items, (std::vector<std::size_t>{0, 1, 4}));
}

TEST(StopGroups, LieInTheMiddleOfWhatTheyServe) {
    const auto groups = groupStops(lengths({1280, 1282}), sixteenth, Length::thirtySeconds(1));
    ASSERT_EQ(groups.size(), 1U);
    EXPECT_EQ(groups[0].setting, Length::thirtySeconds(1281));
    // Grouping at 1/16 moves each reveal by at most 1/32 [calc].
    EXPECT_EQ(revealError(Length::thirtySeconds(1280), groups[0].setting), Length::sixtyFourths(1));
}

TEST(StopGroups, KeepSidesTogetherThatWereMeasuredFarApart) {
    const StopItem twisted{Length::inches(60), Length::sixteenths(60 * 16 + 6)};
    const auto groups = groupStops({twisted, StopItem::one(Length::inches(60))}, sixteenth, {});
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(groups[0].setting, Length::sixteenths(60 * 16 + 3));
    EXPECT_EQ(groups[0].items, std::vector<std::size_t>{0});
}

TEST(ServingSetting, IsTheNearestWithinTolerance) {
    const std::vector<Length> settings{
        Length::thirtySeconds(100), Length::thirtySeconds(97), Length::thirtySeconds(90)};
    const auto at = [&](int n) {
        return servingSetting(settings, StopItem::one(Length::thirtySeconds(n)), sixteenth);
    };
    EXPECT_EQ(at(99), 0U);
    EXPECT_EQ(at(98), 1U);
    EXPECT_EQ(at(88), 2U);
    EXPECT_EQ(at(94), settings.size());
}
