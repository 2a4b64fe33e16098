// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_reading.h"
#include "io/opening_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using ::testing::HasSubstr;

class DoorSchedule : public ::testing::Test, public ScheduleReader {
protected:
    DoorSchedule()
        : ScheduleReader(ScheduleKind::doors) {}
};

TEST_F(DoorSchedule, ReadsAPlainRow) {
    const auto door = one("No.,Size,Type,Hand,From,To,Hardware,Stop,Jamb\n"
                          "12,2868,Prehung,LH,Hall bath,101,Privacy w/ deadbolt,x,4 9/16\n");
    EXPECT_EQ(door.mark, "12");
    EXPECT_EQ(door.kind, OpeningKind::prehungDoor);
    EXPECT_EQ(door.width, Length::inches(32)); // 2868 = 2 ft 8 in x 6 ft 8 in [cp]
    EXPECT_EQ(door.height, Length::inches(80));
    EXPECT_EQ(door.style, TrimStyle::threeSided);
    EXPECT_EQ(door.sidesCased, 2);
    EXPECT_EQ(door.hand, Hand::left);
    EXPECT_EQ(door.room, bath);
    EXPECT_EQ(door.otherRoom, kitchen);
    EXPECT_EQ(door.level, upper);
    EXPECT_EQ(door.lockset, Lockset::privacy);
    EXPECT_TRUE(door.deadbolt);
    EXPECT_TRUE(door.doorStop);
    EXPECT_EQ(door.frameDepth, Length::sixteenths(73));
}

TEST_F(DoorSchedule, ReadsDoorNotationInEveryColumn) {
    const auto size = one("Mark,Size,Qty\nD1,2-8 x 6-8,1\n");
    EXPECT_EQ(size.width, Length::inches(32));
    const auto parts = one("Mark,Width,Height\nD1,2-8,6-8\n");
    EXPECT_EQ(parts.width, Length::inches(32));
    EXPECT_EQ(parts.height, Length::inches(80));
    const auto feet = one("Mark;Width;Height\nD1;2'-8\";6'-8\"\n");
    EXPECT_EQ(feet.height, Length::inches(80));
}

TEST_F(DoorSchedule, KnowsKindsOfDoors) {
    const std::pair<const char*, OpeningKind> kinds[]{{"", OpeningKind::prehungDoor},
        {"Interior 6 panel", OpeningKind::prehungDoor}, {"Pr. French", OpeningKind::doubleDoor},
        {"pair of bi-folds", OpeningKind::bifoldDoor}, {"By-Pass", OpeningKind::bypassDoor},
        {"PKT", OpeningKind::pocketDoor}, {"Ext. entry", OpeningKind::exteriorDoor},
        {"sliding glass", OpeningKind::exteriorDoor}, {"C.O.", OpeningKind::casedOpening},
        {"cased opening", OpeningKind::casedOpening}};
    for (const auto& [text, wanted] : kinds)
        EXPECT_EQ(one(std::string("Mark,Size,Type\nD1,3068,") + text + "\n").kind, wanted) << text;
    EXPECT_THAT(rejectedAt("Mark,Size,Type\nD1,3068,barn\n"),
        HasSubstr("line 2, Type, \"barn\": \"barn\" is no kind of door"));
}

TEST_F(DoorSchedule, WholeWordsOnly) {
    EXPECT_FALSE(doorKind("context"));
    EXPECT_FALSE(doorKind("painted"));
    EXPECT_FALSE(handOf("small"));
    EXPECT_EQ(mullsOf("quadrant"), 0);
    EXPECT_EQ(windowShape("archive").kind, WindowShape::Kind::rectangle);
}

TEST_F(DoorSchedule, AnExteriorDoorIsCasedOnce) {
    EXPECT_EQ(one("Mark,Size,Type\nD1,3068,exterior\n").sidesCased, 1);
    EXPECT_EQ(one("Mark,Size,Type,Sides\nD1,3068,exterior,both\n").sidesCased, 2);
    EXPECT_EQ(one("Mark,Size,Sides\nD1,3068,1\n").sidesCased, 1);
    EXPECT_THAT(rejectedAt("Mark,Size,Sides\nD1,3068,3\n"), HasSubstr("Sides, \"3\""));
}

TEST_F(DoorSchedule, ReadsHands) {
    for (const char* text : {"R", "RH", "Right hand", "rhr", "right"})
        EXPECT_EQ(one(std::string("Mark,Size,Swing\nD1,3068,") + text + "\n").hand, Hand::right);
    EXPECT_EQ(one("Mark,Size,Swing\nD1,3068,-\n").hand, Hand::none);
    EXPECT_THAT(rejectedAt("Mark,Size,Swing\nD1,3068,up\n"), HasSubstr("say left or right"));
}

TEST_F(DoorSchedule, ReadsLocks) {
    EXPECT_EQ(one("Mark,Size,Lockset\nD1,3068,Passage\n").lockset, Lockset::passage);
    EXPECT_EQ(one("Mark,Size,Lockset\nD1,3068,keyed entry\n").lockset, Lockset::keyed);
    EXPECT_EQ(one("Mark,Size,Lockset\nD1,3068,by others\n").lockset, Lockset::none);
    EXPECT_EQ(one("Mark,Size,Lockset,DB\nD1,3068,dummy,yes\n").lockset, Lockset::dummy);
    EXPECT_TRUE(reading.rows[0].opening->deadbolt);
    EXPECT_THAT(rejectedAt("Mark,Size,Lockset\nD1,3068,magnet\n"), HasSubstr("is no lockset"));
    EXPECT_THAT(rejectedAt("Mark,Size,DB\nD1,3068,perhaps\n"), HasSubstr("neither yes nor no"));
}

TEST_F(DoorSchedule, AWindowsTrimIsNoDoors) {
    EXPECT_EQ(one("Mark,Size,Trim\nD1,3068,butted head\n").style, TrimStyle::buttedHead);
    EXPECT_THAT(rejectedAt("Mark,Size,Trim\nD1,3068,stool and apron\n"),
        HasSubstr("no trim style for a door"));
}

TEST_F(DoorSchedule, NeedsMarkAndSize) {
    read("Type,Hand\nprehung,L\n");
    EXPECT_THAT(
        reading.missingSentence(), HasSubstr("The schedule of doors has no column for mark"));
}

} // namespace

} // namespace miterbook
