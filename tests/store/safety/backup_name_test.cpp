// SPDX-License-Identifier: GPL-3.0-or-later
// Names of backups, and which of them are kept.
#include "store/safety/retention.h"
#include "support/random_values.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace miterbook {
namespace {

TEST(BackupName, SaysWhenAndWhy) {
    EXPECT_EQ(backupName("2026-11-26T01:30:12Z", BackupReason::daily),
        "2026-11-26T01-30-12Z-daily.miterbook");
    EXPECT_EQ(backupName("2026-11-26T01:30:12Z", BackupReason::olderFormat, 3),
        "2026-11-26T01-30-12Z-older-3.miterbook");
    EXPECT_EQ(backupFolder("/work/shop.miterbook"), "/work/shop.miterbook.backups");
}

TEST(BackupName, IsReadBack) {
    for (const auto& each : Words<BackupReason>::list) {
        for (const int n : {1, 2, 11}) {
            const auto read = readBackupName(backupName("2024-02-29T23:59:59Z", each.value, n));
            ASSERT_TRUE(read) << each.text << n;
            EXPECT_EQ(read->at, "2024-02-29T23:59:59Z");
            EXPECT_EQ(read->reason, each.value);
            EXPECT_EQ(dayOf(*read), std::chrono::year(2024) / 2 / 29);
        }
    }
}

TEST(BackupName, OtherFilesAreNoBackups) {
    for (const char* name : {"", ".miterbook", "shop.miterbook", "2026-11-26.miterbook",
             "2026-11-26T01-30-12Z.miterbook", "2026-11-26T01-30-12Z-.miterbook",
             "2026-11-26T01-30-12Z-weekly.miterbook", "2026-11-26T01-30-12Z-daily",
             "2026-11-26T01-30-12Z-daily-1.miterbook", "2026-11-26T01-30-12Z-daily-x.miterbook",
             "2026-13-26T01-30-12Z-daily.miterbook", "2026-11-26T01:30:12Z-daily.miterbook",
             "2026-11-26T01-30-12Z-daily.miterbook.part", "x026-11-26T01-30-12Z-daily.miterbook"})
        EXPECT_FALSE(readBackupName(name)) << name;
}

Backup on(Date day, int hour = 12, std::int64_t bytes = 1000) {
    const std::string two = (hour < 10 ? "0" : "") + std::to_string(hour);
    const std::string at = isoDate(day) + "T" + two + ":00:00Z";
    return {"/b/" + backupName(at, BackupReason::daily), at, BackupReason::daily, bytes};
}

/// What is left when backups come one by one and old ones go after each.
std::vector<Backup> kept(const std::vector<Backup>& all, const Retention& retention = {}) {
    std::vector<Backup> left;
    for (const Backup& backup : all) {
        left.push_back(backup);
        for (const Backup& gone : toLetGo(left, retention))
            std::erase(left, gone);
    }
    return left;
}

TEST(Retention, AHandfulAllStay) {
    std::vector<Backup> few;
    for (int hour = 0; hour < 10; ++hour)
        few.push_back(on(std::chrono::year(2026) / 3 / 1, hour));
    EXPECT_TRUE(toLetGo(few).empty());
}

TEST(Retention, TenYearsOfDailyBackupsThinOut) {
    std::vector<Backup> all;
    const Date first = std::chrono::year(2016) / 1 / 1;
    for (int day = 0; day < 3650; ++day)
        all.push_back(on(addDays(first, day)));
    const auto left = kept(all);
    const Date last = dayOf(all.back());
    EXPECT_LE(left.size(), 14U + 8 + 24 + 11);
    EXPECT_GE(left.size(), 14U + 24);
    for (int day = 0; day < 14; ++day)
        EXPECT_TRUE(std::ranges::count(left, on(addDays(last, -day)))) << day;
    for (int year = 2016; year < 2025; ++year) {
        EXPECT_TRUE(std::ranges::any_of(left, [&](const Backup& backup) {
            return dayOf(backup).year() == std::chrono::year(year);
        })) << year;
    }
}

TEST(Retention, TheLatestStaysWhateverItWeighs) {
    std::vector<Backup> all;
    for (int day = 0; day < 40; ++day)
        all.push_back(on(addDays(std::chrono::year(2026) / 1 / 1, day), 12, std::int64_t(1) << 31));
    Retention retention;
    retention.newest = 5;
    const auto left = kept(all, retention);
    EXPECT_EQ(left.size(), 5U); // 2 GB each, 4 GB allowed: only the newest are beyond question
    EXPECT_EQ(left.back(), all.back());
}

TEST(Retention, NeverLetsTheNewestGoWhateverComes) {
    RandomValues random(31);
    for (int run = 0; run < 60; ++run) {
        std::vector<Backup> all;
        const std::size_t count = 1 + random.below(120);
        for (std::size_t i = 0; i < count; ++i) {
            const Date day = addDays(std::chrono::year(2020) / 1 / 1, int(random.below(900)));
            all.push_back(on(day, int(random.below(24)), std::int64_t(random.below(1 << 30))));
        }
        std::ranges::sort(all, std::ranges::greater(), &Backup::at);
        const auto twins = std::ranges::unique(all, {}, &Backup::at);
        all.erase(twins.begin(), twins.end());
        const auto go = toLetGo(all);
        std::ranges::reverse(all);
        const std::string newest = all.back().at;
        EXPECT_TRUE(std::ranges::none_of(go, [&](const Backup& b) { return b.at == newest; }));
        EXPECT_TRUE(std::ranges::is_sorted(go, {}, &Backup::at));
        EXPECT_LE(go.size() + std::min<std::size_t>(10, all.size()), all.size());
        EXPECT_EQ(toLetGo(all), go) << "the order in which they are told plays no part";
    }
}

} // namespace
} // namespace miterbook
