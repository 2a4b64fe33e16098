// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_reading.h"
#include "io/schedule_edit.h"
#include "job/row_check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

class ScheduleEdit : public ::testing::Test, public ScheduleReader {
protected:
    ScheduleEdit()
        : ScheduleReader(ScheduleKind::windows) {}

    Edit edit(std::string_view text, const std::vector<HeaderChoice>& choices = {}) {
        read(text, choices);
        return scheduleEdit(book, ids, {plan, main}, reading, "windows.csv");
    }

    void perform(const Edit& e) {
        ASSERT_TRUE(checkRows(book, e)) << checkRows(book, e).error().sentence;
        ASSERT_TRUE(check(book, e)) << check(book, e).error().sentence;
        apply(book, e);
    }
};

TEST_F(ScheduleEdit, BringsGoodRowsInOneEdit) {
    Opening present;
    present.mark = "D1";
    present.position = 4;
    put(present);
    const Book before = book;
    const Edit made = edit("Mark,Qty,Size\nW1,2,3050\nW2,oops,3050\nW3,1,2030\n");
    EXPECT_EQ(made.sentence, "Bring in 3 windows from windows.csv");
    ASSERT_EQ(made.changes.size(), 2U) << "the bad row is left out";
    perform(made);
    const auto& openings = rows().of<Opening>();
    ASSERT_EQ(openings.size(), 3U);
    const Opening& last = std::prev(openings.end())->second;
    EXPECT_EQ(last.mark, "W3");
    EXPECT_EQ(last.plan, plan);
    EXPECT_EQ(last.position, 6);
    perform(inverse(made));
    EXPECT_EQ(book, before);
}

TEST_F(ScheduleEdit, IsEmptyWithoutGoodRows) {
    EXPECT_TRUE(edit("Mark,Qty,Size\nW2,oops,3050\n").empty());
    EXPECT_TRUE(edit("Mark,Glass\nW2,clear\n", {{"glass", {}}}).empty());
}

TEST_F(ScheduleEdit, SpeaksOfOneWindow) {
    EXPECT_EQ(edit("Mark,Size\nW1,3050\n").sentence, "Bring in 1 window from windows.csv");
}

TEST_F(ScheduleEdit, RemembersTheUsersHeaders) {
    perform(edit("Wdw Nr,Glass,Size\nW1,clear,3050\n",
        {{"Wdw Nr", ScheduleField::mark}, {"Glass", std::nullopt}}));
    EXPECT_EQ(book.prices.of<HeaderName>().size(), 2U);
    read("WDW NR,Glass,Size\nW2,clear,3050\n");
    ASSERT_EQ(reading.rows.size(), 1U) << "known without being asked";
    EXPECT_TRUE(reading.unmapped.empty());
    perform(edit("Wdw Nr,Glass,Size\nW3,tinted,3050\n", {{"Glass", ScheduleField::note}}));
    EXPECT_EQ(book.prices.of<HeaderName>().size(), 2U) << "the later choice takes the place";
    read("Wdw Nr,Glass,Size\nW4,tinted,3050\n");
    EXPECT_EQ(reading.rows[0].opening->note, "tinted");
}

TEST_F(ScheduleEdit, PutsClosetsIntoTheirRooms) {
    kind = ScheduleKind::rooms;
    const Edit made = edit("Name,Size,Level,Closet\nCoat closet,3' x 5',Upper,shelf and rod\n");
    EXPECT_EQ(made.sentence, "Bring in 1 room from windows.csv");
    perform(made);
    const Room& room = std::prev(rows().of<Room>().end())->second;
    const Closet& closet = rows().of<Closet>().begin()->second;
    EXPECT_EQ(closet.room, room.id);
    EXPECT_EQ(closet.level, upper);
    EXPECT_EQ(closet.name, "Coat closet");
    EXPECT_EQ(room.position, 3);
}

TEST_F(ScheduleEdit, AddsMissingLevels) {
    const Edit made = levelsEdit(book, ids, plan, {"Basement", "Second floor"});
    EXPECT_EQ(made.sentence, "Add levels Basement, Second floor");
    perform(made);
    std::vector<Level> levels;
    for (const auto& [id, level] : rows().of<Level>())
        levels.push_back(level);
    ASSERT_EQ(levels.size(), 4U);
    EXPECT_EQ(levels[2].position, 3);
    EXPECT_FALSE(levels[2].upper);
    EXPECT_TRUE(levels[3].upper);
    EXPECT_EQ(levelsEdit(book, ids, plan, {"Attic"}).sentence, "Add level Attic");
}

} // namespace

} // namespace miterbook
