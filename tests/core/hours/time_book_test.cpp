// SPDX-License-Identifier: GPL-3.0-or-later
// Sums stay true whatever happens to the entries, and say all that adding up entries would.
#include "core/hours/time_kit.h"
#include "hours/house_progress.h"
#include "hours/time_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace miterbook {
namespace {

std::vector<TimeEntry> someEntries(std::uint32_t seed, int count) {
    std::mt19937 random(seed);
    std::vector<TimeEntry> entries;
    for (int i = 0; i < count; ++i) {
        const auto work = static_cast<PieceOfWork>(random() % 4);
        const auto kind = static_cast<TimeKind>(random() % 5);
        TimeEntry entry = timeAt(static_cast<int>(random() % 7), random() % 2 ? lena : omar, work,
            Hours::minutes(15 + random() % 400), Quantity::count(random() % 5), kind);
        entry.house = random() % 3 == 0 ? lot14 : lot12;
        entries.push_back(entry);
    }
    return entries;
}

TimeBook bookOf(const std::vector<TimeEntry>& entries) {
    TimeBook book;
    for (const TimeEntry& entry : entries)
        book.change(nullptr, &entry);
    return book;
}

TEST(TimeBook, AddsUpWhatEntriesHaveInCommon) {
    const TimeBook book = bookOf(
        {timeAt(0, lena, PieceOfWork::doors, Hours::whole(6), Quantity::count(5)),
            timeAt(1, omar, PieceOfWork::doors, Hours::whole(2), Quantity::count(1)),
            timeAt(1, omar, PieceOfWork::base, Hours::whole(3))});
    ASSERT_EQ(book.of(lot12).size(), 2U);
    EXPECT_EQ(book.of(lot12)[0].time, Hours::whole(8));
    EXPECT_EQ(book.of(lot12)[0].done, Quantity::count(6));
    EXPECT_EQ(book.of(lot12)[0].entries, 2);
    EXPECT_EQ(book.total(lot12), Hours::whole(11));
    EXPECT_TRUE(book.of(lot14).empty());
}

TEST(TimeBook, CallbacksAreKeptByDay) {
    const auto back = [](int day) {
        return timeAt(day, lena, PieceOfWork::doors, Hours::whole(1), {}, TimeKind::callback);
    };
    const TimeBook book = bookOf({back(0), back(0), back(3)});
    ASSERT_EQ(book.of(lot12).size(), 2U);
    EXPECT_EQ(book.of(lot12)[1].key.day, weekday(3));
}

TEST(TimeBook, AnythingTakenBackLeavesNothing) {
    for (const std::uint32_t seed : {1U, 2U, 3U}) {
        const auto entries = someEntries(seed, 60);
        TimeBook book = bookOf(entries);
        for (const TimeEntry& entry : entries) {
            TimeEntry changed = entry;
            changed.house = lot14;
            changed.time += Hours::whole(1);
            book.change(&entry, &changed);
            book.change(&changed, nullptr);
        }
        EXPECT_EQ(book, TimeBook());
    }
}

TEST(TimeBook, SumsFromTheFileAreThoseOfTheEntries) {
    const auto entries = someEntries(7, 200);
    const TimeBook all = bookOf(entries);
    TimeBook summed;
    for (const Id<House> house : {lot14, lot12}) {
        for (const TimeSum& sum : all.of(house))
            summed.addSum(sum);
    }
    Table<TimeEntry> table;
    for (const TimeEntry& entry : entries)
        table.put(entry);
    summed.addRead(table);
    EXPECT_EQ(summed, all);
    summed.addRead(table);
    EXPECT_EQ(summed, all) << "reading twice adds nothing";
}

TEST(TimeBook, ProgressFromSumsIsProgressFromEntries) {
    std::vector<TimeEntry> entries = someEntries(9, 120);
    std::erase_if(entries, [](const TimeEntry& entry) { return entry.house != lot12; });
    const std::vector<WorkBid> bids{
        {PieceOfWork::doors, Hours::whole(40), {}, Quantity::count(90), {}, {}},
        {PieceOfWork::base, Hours::whole(30), {}, Quantity::count(100), {}, {}}};
    auto summed = houseProgress(bids, bookOf(entries).summedEntries(lot12));
    auto each = houseProgress(bids, entries);
    const auto byWork
        = [](const WorkProgress& a, const WorkProgress& b) { return a.work < b.work; };
    std::ranges::sort(summed.works, byWork);
    std::ranges::sort(each.works, byWork);
    EXPECT_EQ(summed, each);
}

} // namespace
} // namespace miterbook
