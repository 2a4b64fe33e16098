// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/opening_specs.h"
#include "stages/plan/row_names.h"
#include "ui/ui_kit.h"

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

TEST(Marks, GoOnAfterTheHighest) {
    EXPECT_EQ(nextMark({}, "W"), "W1");
    EXPECT_EQ(nextMark({"W2", "W10", "D11", "Wide"}, "W"), "W11");
    EXPECT_EQ(nextMark({"101", "104"}, ""), "105");
}

TEST(Marks, OfOpeningsKeepTheirPrefix) {
    PlanRows rows;
    EXPECT_EQ(newOpeningMark(rows, true, 0), "W1");
    EXPECT_EQ(newOpeningMark(rows, false, 2), "D3");
    Opening opening;
    opening.id = Id<Opening>(1);
    opening.mark = "A-7";
    rows.of<Opening>().put(opening);
    EXPECT_EQ(newOpeningMark(rows, true, 0), "A-8");
    EXPECT_EQ(newRoomMark(rows, 0), "101");
    EXPECT_EQ(newRoomMark(rows, 1), "102");
}

TEST(NewOpening, IsTrimmedAsTheLastOfItsKind) {
    PlanRows rows;
    Opening last;
    last.id = Id<Opening>(1);
    last.mark = "W1";
    last.style = TrimStyle::stoolAndApron;
    last.wallThickness = Length::sixteenths(105);
    last.width = Length::inches(36);
    rows.of<Opening>().put(last);
    Opening next;
    beginOpening(next, rows, true, 0);
    EXPECT_EQ(next.mark, "W2");
    EXPECT_EQ(next.style, TrimStyle::stoolAndApron);
    EXPECT_EQ(next.wallThickness, last.wallThickness);
    EXPECT_EQ(next.width, Length()) << "its size is its own";
    Opening door;
    beginOpening(door, rows, false, 0);
    EXPECT_EQ(door.sidesCased, 2);
    EXPECT_TRUE(door.isDoor());
}

TEST(NewOpening, MarksAreNotUsedTwice) {
    const UiKit kit;
    Opening again = *kit.openingOf("W1");
    again.id = Id<Opening>(99'999);
    const auto checked = checkTyped(again, kit.book().sheet(kit.plan()));
    ASSERT_FALSE(checked.ok());
    EXPECT_EQ(checked.error().sentence, "Another opening is marked W1 already.");
}

TEST(RoomNames, FindByNameAndByMark) {
    const UiKit kit;
    const RoomNames rooms(kit.book(), kit.plan(), {});
    ASSERT_GT(rooms.names().size(), 2);
    EXPECT_EQ(rooms.names().first(), QString());
    const QString name = rooms.names().at(1);
    const auto found = rooms.find(name);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(rooms.nameOf(*found), name);
    EXPECT_FALSE(*rooms.find(u" "_s));
    const auto none = rooms.find(u"ballroom"_s);
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error().sentence, "The plan has no room \"ballroom\".");
}

TEST(RoomNames, RepeatedNamesCarryTheirMarks) {
    Book book;
    const Id<Plan> plan(1);
    for (int i = 0; i < 2; ++i) {
        Room room;
        room.id = Id<Room>(10 + i);
        room.plan = plan;
        room.name = "Bath";
        room.mark = std::to_string(101 + i);
        book.sheets[plan].of<Room>().put(room);
    }
    const RoomNames rooms(book, plan, {});
    EXPECT_EQ(rooms.names(), (QStringList{QString(), u"Bath 101"_s, u"Bath 102"_s}));
    EXPECT_EQ(*rooms.find(u"102"_s), Id<Room>(11));
    EXPECT_EQ(*rooms.find(u"bath 101"_s), Id<Room>(10));
}

} // namespace
} // namespace miterbook
