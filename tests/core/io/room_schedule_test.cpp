// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_reading.h"
#include "io/room_words.h"
#include "plan/room_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

class RoomSchedule : public ::testing::Test, public ScheduleReader {
protected:
    RoomSchedule()
        : ScheduleReader(ScheduleKind::rooms) {}

    Room room(std::string_view text) { return row(text).room.value_or(Room()); }
};

TEST_F(RoomSchedule, ReadsAPlainRow) {
    const auto den = room(
        "No,Name,Level,Length,Width,Ceiling,Base,Shoe,Crown,Chair rail,Cabinets,Notes\n"
        "102,Den,Main,14'6,12',9',Low base,none,Spring crown,chair rail,4',oak floor\n");
    EXPECT_EQ(den.mark, "102");
    EXPECT_EQ(den.name, "Den");
    EXPECT_EQ(den.level, main);
    EXPECT_EQ(perimeter(den.walls), Length::feet(53)); // 2 x (14.5 + 12) ft [calc]
    EXPECT_EQ(den.ceiling, Length::feet(9));
    EXPECT_EQ(den.baseChoice, RunChoice::own);
    EXPECT_EQ(den.base, profile("Low base"));
    EXPECT_EQ(den.shoeChoice, RunChoice::none);
    EXPECT_EQ(den.crownChoice, RunChoice::own);
    EXPECT_EQ(den.crown, profile("Spring crown"));
    EXPECT_EQ(den.chairRail, profile("Chair rail"));
    EXPECT_EQ(den.baseBreak, Length::feet(4));
    EXPECT_EQ(den.note, "oak floor");
}

TEST_F(RoomSchedule, SilenceIsAsThePlanHasIt) {
    const auto den = room("Name,Size,Base,Crown\nDen,12' x 14',,\n");
    EXPECT_EQ(den.baseChoice, RunChoice::plan);
    EXPECT_EQ(den.crownChoice, RunChoice::none) << "crown is never taken for granted";
    EXPECT_EQ(room("Name,Size,Crown\nDen,12' x 14',yes\n").crownChoice, RunChoice::plan);
    EXPECT_EQ(room("Name,Size,Base\nDen,12' x 14',Tile\n").baseChoice, RunChoice::none);
    EXPECT_EQ(room("Name,Size,Base\nDen,12' x 14',typ.\n").baseChoice, RunChoice::plan);
}

TEST_F(RoomSchedule, ReadsEverySizeForm) {
    EXPECT_EQ(perimeter(room("Name,Size,No\nDen,12'-0\" x 14'-6\",\n").walls), Length::feet(53));
    EXPECT_EQ(perimeter(room("Name,Size (ft),No\nDen,12 x 14.5,\n").walls), Length::feet(53));
    EXPECT_EQ(perimeter(room("Name,Length (m),Width (m)\nDen,4.2,3.6\n").walls),
        Length::millimetres(15'600));
    EXPECT_EQ(perimeter(room("Name;Walls;No\nDen;14', 10', 6' ^ 4', 8', 14';\n").walls),
        Length::feet(56));
}

TEST_F(RoomSchedule, APerimeterAloneIsFourWalls) {
    const auto den = room("Name,Perimeter (ft),Level\nDen,45.1,\n");
    ASSERT_EQ(den.walls.size(), 4U);
    // [calc] 45.1 ft in nanometres, to the last one
    EXPECT_EQ(perimeter(den.walls).nm(), 45'100 * Length::nmPerInch * 12 / 1000);
    EXPECT_THAT(reading.remarks, ElementsAre(HasSubstr("only its perimeter")));
}

TEST_F(RoomSchedule, RejectsWhatIsNoRoom) {
    EXPECT_EQ(rejectedAt("Name,Size,No\nDen,12 x 14,\n"),
        "line 2, Size, \"12 x 14\": A wall under 18 in would be no room; bare numbers are inches, "
        "write feet as 12'.");
    EXPECT_THAT(rejectedAt("Name,Length,Width\nDen,14',\n"), HasSubstr("A width is needed"));
    EXPECT_THAT(rejectedAt("Name,Size,No\nDen,,7\n"), HasSubstr("size is needed"));
    EXPECT_THAT(rejectedAt("Name,Walls,No\nDen,\"12', oops\",1\n"), HasSubstr("Wall 2"));
    EXPECT_THAT(rejectedAt("Name,Size,Crown\nDen,12' x 14',C-9\n"),
        HasSubstr("\"C-9\" is no one crown profile of the book; add it there"));
    EXPECT_THAT(rejectedAt("Name,Size,Ceiling\nDen,12' x 14',high\n"), HasSubstr("Ceiling"));
    EXPECT_THAT(rejectedAt("Name,Size,Ceiling\nDen,12' x 14',100'\n"), HasSubstr("more than 60'"));
    EXPECT_THAT(rejectedAt("No,Name,Size,Notes\n,,12' x 14',x\n"), HasSubstr("number or a name"));
}

TEST_F(RoomSchedule, AShortReturnInAnOutlineIsFine) {
    EXPECT_EQ(room("Name;Walls;No\nDen;12', 10', 12', 8', 4\", 2';\n").walls.size(), 6U);
}

TEST_F(RoomSchedule, RejectsTwins) {
    EXPECT_THAT(rejectedAt("No,Name,Size\n101,Other,9' x 9'\n"), HasSubstr("this mark already"));
    read("Name,Size,Level\nCloset,4' x 6',\nCLOSET,4' x 6',\n");
    EXPECT_EQ(reading.rows.size(), 1U);
    EXPECT_THAT(reading.rejected[0].reason, HasSubstr("Line 2 has this name"));
    read("No,Name,Size\n7,Closet,4' x 6'\n8,Closet,4' x 6'\n");
    EXPECT_EQ(reading.rows.size(), 2U) << "their numbers tell them apart";
}

TEST_F(RoomSchedule, MakesClosets) {
    const auto made = row(
        "Name,Size,Shelving,Shelf depth\nPrimary closet,5' x 8',Rod & shelf,14\n");
    ASSERT_TRUE(made.closet);
    EXPECT_EQ(made.room->use, RoomUse::closet);
    EXPECT_EQ(made.closet->kind, ClosetKind::shelfAndRod);
    EXPECT_EQ(made.closet->width, Length::feet(8)) << "the longest wall";
    EXPECT_EQ(made.closet->depth, Length::inches(14));
    EXPECT_EQ(made.closet->shelf, profile("Shelf"));
    EXPECT_EQ(made.closet->rod, profile("Rod"));
    EXPECT_FALSE(made.closet->cleat) << "the book has none";
}

TEST_F(RoomSchedule, CountsShelves) {
    const auto made = row("Name,Size,Closet,Closet width\nHall,4' x 6',5 shelves,3'\n");
    EXPECT_EQ(made.closet->kind, ClosetKind::shelves);
    EXPECT_EQ(made.closet->shelves, 5);
    EXPECT_EQ(made.closet->width, Length::feet(3));
    EXPECT_FALSE(made.closet->rod);
    EXPECT_THAT(
        rejectedAt("Name,Size,Closet\nLinen,2' x 3',shelves\n"), HasSubstr("How many shelves"));
    EXPECT_EQ(row("Name,Size,Closet,Shelves\nLinen,2' x 3',shelves,4\n").closet->shelves, 4);
    EXPECT_THAT(rejectedAt("Name,Size,Closet\nHall,4' x 6',double rod\n"), HasSubstr("How wide"));
    EXPECT_THAT(rejectedAt("Name,Size,Closet\nHall,4' x 6',hooks\n"), HasSubstr("is no shelving"));
}

TEST_F(RoomSchedule, TellsUsesFromNames) {
    EXPECT_EQ(useFromName("Primary Bath"), RoomUse::bath);
    EXPECT_EQ(useFromName("Hall bath closet"), RoomUse::closet);
    EXPECT_EQ(useFromName("Walk-in pantry"), RoomUse::pantry);
    EXPECT_EQ(useFromName("Great room"), RoomUse::room);
    EXPECT_EQ(room("Name,Use,Size\nNook,Kitchen,9' x 9'\n").use, RoomUse::kitchen);
}

TEST_F(RoomSchedule, RoomsOfUnknownLevelsAreSaid) {
    read("Name,Size,Level\nDen,9' x 9',Basement\nBar,9' x 9',basement\nLoft,9' x 9',Upper\n");
    EXPECT_THAT(reading.missingLevels, ElementsAre("Basement"));
    EXPECT_EQ(reading.rows[0].room->level, main);
    EXPECT_EQ(reading.rows[2].room->level, upper);
}

} // namespace

} // namespace miterbook
