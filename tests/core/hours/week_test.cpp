// SPDX-License-Identifier: GPL-3.0-or-later
// The week grid: what it gathers, and what typing into it does to the entries behind it.
#include "core/hours/time_kit.h"

#include "hours/week_entry.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(WeekOf, BeginsOnTheShopsDay) {
    // [calc] 2026-03-04 is a Wednesday.
    const Date wednesday = weekday(2);
    EXPECT_EQ(weekOf(wednesday, WeekStart::monday), weekday(0));
    EXPECT_EQ(weekOf(wednesday, WeekStart::sunday), weekday(-1));
    EXPECT_EQ(weekOf(wednesday, WeekStart::saturday), weekday(-2));
    EXPECT_EQ(weekOf(weekday(0), WeekStart::monday), weekday(0));
    EXPECT_EQ(weekOf(weekday(6), WeekStart::monday), weekday(0));
    EXPECT_EQ(weekOf(noDate, WeekStart::monday), noDate);
}

TEST(WeekGrid, GathersLinesAndLeavesOtherWeeksOut) {
    const std::vector<TimeEntry> entries{
        timeAt(1, omar, PieceOfWork::base, Hours::whole(3)),
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(4), Quantity::count(3)),
        timeAt(0, lena, PieceOfWork::doors, Hours::minutes(90), Quantity::count(1)),
        timeAt(6, lena, PieceOfWork::doors, Hours::whole(2)),
        timeAt(-1, lena, PieceOfWork::doors, Hours::whole(8)),
        timeAt(7, lena, PieceOfWork::doors, Hours::whole(8)),
    };
    const Week week = weekGrid(entries, weekday(0));
    ASSERT_EQ(week.lines.size(), 2U);
    EXPECT_EQ(week.lines[0].days[0], (WeekCell{Hours::minutes(330), Quantity::count(4), 2}));
    EXPECT_EQ(week.lines[0].time(), Hours::minutes(450));
    EXPECT_EQ(week.lines[0].done(), Quantity::count(4));
    EXPECT_EQ(week.total(), Hours::minutes(630));
    EXPECT_EQ(week.total(omar), Hours::whole(3));
    EXPECT_EQ(week.dayTotal(0), Hours::minutes(330));
    EXPECT_EQ(week.dayTotal(1, lena), Hours());
    EXPECT_EQ(week.people(), (std::vector{lena, omar}));
}

TEST(WeekGrid, KeepsKindsAndHousesApart) {
    std::vector<TimeEntry> entries{
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(4)),
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(1), {}, TimeKind::waiting),
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(2)),
    };
    entries.back().house = lot14;
    EXPECT_EQ(weekGrid(entries, weekday(0)).lines.size(), 3U);
    EXPECT_TRUE(weekGrid(entries, noDate).lines.empty());
}

TEST(LinesToRepeat, AreThoseNotThereYet) {
    const Week last = weekGrid({timeAt(-7, lena, PieceOfWork::doors, Hours::whole(4)),
                                   timeAt(-6, lena, PieceOfWork::base, Hours::whole(4))},
        weekday(-7));
    const Week week = weekGrid({timeAt(0, lena, PieceOfWork::base, Hours::whole(4))}, weekday(0));
    const auto keys = linesToRepeat(last, week);
    ASSERT_EQ(keys.size(), 1U);
    EXPECT_EQ(keys.front().work, PieceOfWork::doors);
}

namespace {

struct Grid {
    std::vector<TimeEntry> entries;
    IdSource ids{1000};

    Result<EntryChange> type(Hours time, Quantity done = {}) {
        return typeCell(
            entries, keyOf(timeAt(0, lena, PieceOfWork::doors, {})), weekday(0), time, done, ids);
    }
};

} // namespace

TEST(TypeCell, MakesAnEntryInAnEmptyCell) {
    Grid grid;
    const auto change = grid.type(Hours::whole(5), Quantity::count(2));
    ASSERT_TRUE(change);
    ASSERT_EQ(change->put.size(), 1U);
    const TimeEntry& made = change->put.front();
    EXPECT_EQ(made.id, Id<TimeEntry>(1001));
    EXPECT_EQ(made.date, weekday(0));
    EXPECT_EQ(made.person, lena);
    EXPECT_EQ(made.house, lot12);
    EXPECT_EQ(made.time, Hours::whole(5));
    EXPECT_EQ(made.done, Quantity::count(2));
    EXPECT_TRUE(grid.type({})->empty());
}

TEST(TypeCell, ChangesTheOneEntryAndKeepsItsNote) {
    Grid grid{{timeAt(0, lena, PieceOfWork::doors, Hours::whole(5))}};
    grid.entries.front().note = "jambs out of plumb";
    const auto change = grid.type(Hours::whole(6));
    ASSERT_EQ(change->put.size(), 1U);
    EXPECT_EQ(change->put.front().id, grid.entries.front().id);
    EXPECT_EQ(change->put.front().note, "jambs out of plumb");
    EXPECT_TRUE(grid.type(Hours::whole(5))->empty()) << "nothing changes";
    EXPECT_EQ(grid.type({})->removed, std::vector{grid.entries.front().id});
}

TEST(TypeCell, GivesTheDifferenceToTheLastOfSeveral) {
    Grid grid{{timeAt(0, lena, PieceOfWork::doors, Hours::whole(5)),
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(2))}};
    EXPECT_EQ(grid.type(Hours::whole(6))->put.front().time, Hours::whole(1));
    EXPECT_EQ(grid.type(Hours::whole(5))->removed, std::vector{grid.entries.back().id});
    EXPECT_EQ(grid.type({})->removed.size(), 2U);
    const auto refused = grid.type(Hours::whole(4));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().sentence,
        "There are 2 entries on 2026-03-02; open them to take away more than the last one holds.");
}
