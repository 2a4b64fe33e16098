// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace miterbook {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

class WindowSchedule : public ::testing::Test, public ScheduleReader {
protected:
    WindowSchedule()
        : ScheduleReader(ScheduleKind::windows) {}
};

TEST_F(WindowSchedule, ReadsAPlainRow) {
    const auto opening = one("Mark,Qty,Size,Type,Room,Wall,Jamb,Sill,Trim,Notes\n"
                             "W4,2,3050,DH,Kitchen,2x6,4 9/16,2'8,Stool & apron,over sink\n");
    EXPECT_EQ(opening.mark, "W4");
    EXPECT_EQ(opening.count, 2);
    EXPECT_EQ(opening.kind, OpeningKind::window);
    EXPECT_EQ(opening.width, Length::inches(36)); // 3050 = 3-0 x 5-0 [cp]
    EXPECT_EQ(opening.height, Length::inches(60));
    EXPECT_EQ(opening.style, TrimStyle::stoolAndApron);
    EXPECT_EQ(opening.sidesCased, 1);
    EXPECT_EQ(opening.room, kitchen);
    EXPECT_EQ(opening.level, main) << "the room's";
    EXPECT_EQ(opening.wallThickness, Length::sixteenths(105)); // 2x6 wall: 6 9/16 [cp]
    EXPECT_EQ(opening.frameDepth, Length::sixteenths(73));
    EXPECT_EQ(opening.note, "over sink; DH; sill 2'8");
}

TEST_F(WindowSchedule, ReadsEverySizeForm) {
    for (const char* size :
        {"3050", "36x60", "36 x 60", "36\" x 60\"", "3'0\" x 5'0\"", "3-0 x 5-0", "3’0” × 5’0”"}) {
        const auto opening = one(std::string("Mark;Size;Qty\nW1;") + size + ";1\n");
        EXPECT_EQ(opening.width, Length::inches(36)) << size;
        EXPECT_EQ(opening.height, Length::inches(60)) << size;
    }
}

TEST_F(WindowSchedule, ReadsWidthAndHeight) {
    const auto inches = one("Mark,Width,Height\nW1,35 1/2,59.5\n");
    EXPECT_EQ(inches.width, Length::sixteenths(568));
    EXPECT_EQ(inches.height, Length::sixteenths(952));
    const auto metric = one("Mark;Width (mm);Height (mm)\nW1;902;1 524\n", "1 524");
    EXPECT_TRUE(metric.mark.empty()) << "a blank as a thousands mark is not guessed at";
    const auto plain = one("Mark;Width (mm);Height (mm)\nW1;902;1524\n");
    EXPECT_EQ(plain.width, Length::millimetres(902));
    EXPECT_EQ(plain.height, Length::inches(60));
    const auto feet = one("Mark;Width (ft);Height (ft)\nW1;3;5.5\n");
    EXPECT_EQ(feet.width, Length::feet(3));
    EXPECT_EQ(feet.height, Length::inches(66));
    const auto centimetres = one("Mark;Size (cm);x\nW1;90 x 150;\n");
    EXPECT_EQ(centimetres.width, Length::millimetres(900));
}

TEST_F(WindowSchedule, ReadsArches) {
    const auto segment = one("Mark,Size,Type,Rise\nW1,36x60,Arch top,6\n");
    EXPECT_EQ(segment.shape, Shape::arch);
    EXPECT_EQ(segment.rise, Length::inches(6));
    EXPECT_EQ(segment.height, Length::inches(54)) << "to the spring line";
    const auto round = one("Mark,Size,Type\nW1,36x60,half-round\n");
    EXPECT_EQ(round.rise, Length::inches(18));
    EXPECT_THAT(rejectedAt("Mark,Size,Type\nW1,36x60,arch\n"), HasSubstr("needs its rise"));
    EXPECT_THAT(rejectedAt("Mark,Size,Rise\nW1,36x60,19\n"), HasSubstr("at most half its width"));
    EXPECT_THAT(rejectedAt("Mark,Size,Type\nW1,36x18,half round\n"), HasSubstr("over all"));
}

TEST_F(WindowSchedule, MakesAnOctagon) {
    const auto octagon = one("Mark,Size,Shape\nW1,24x24,Octagon\n");
    EXPECT_EQ(octagon.shape, Shape::polygon);
    ASSERT_EQ(octagon.sides.size(), 8U);
    // [calc] side = width x tan(22.5 degrees)
    EXPECT_NEAR(octagon.sides[0].length.toInches(), 24 * std::tan(std::acos(-1.0) / 8), 1e-6);
    EXPECT_EQ(octagon.sides[7].angle, Angle::degrees(135));
    EXPECT_THAT(rejectedAt("Mark,Size,Shape\nW1,24x30,Octagon\n"), HasSubstr("drawn in the plan"));
}

TEST_F(WindowSchedule, RefusesShapesThatAScheduleDoesNotTell) {
    EXPECT_EQ(rejectedAt("Mark,Size,Type\nW1,24x30,fixed\nW2,24x30,Gable trapezoid\n"),
        "line 3, Type, \"Gable trapezoid\": The sides of a trapezoid window are not in a schedule; "
        "enter it in the plan.");
}

TEST_F(WindowSchedule, ReadsUnitsSideBySide) {
    EXPECT_EQ(one("Mark,Size,Units\nW1,72x60,2\n").mulls, 1);
    EXPECT_EQ(one("Mark,Size,Type\nW1,72x60,Twin DH\n").mulls, 1);
    EXPECT_EQ(one("Mark,Size,Type\nW1,72x60,triple casement\n").mulls, 2);
    EXPECT_THAT(reading.remarks, ElementsAre(HasSubstr("3 units in one frame, 72\" wide")));
    EXPECT_THAT(rejectedAt("Mark,Size,Units\nW1,72x60,0\n"), HasSubstr("line 2, Units"));
}

TEST_F(WindowSchedule, RejectsWithLineColumnTextAndReason) {
    read("Mark,Qty,Width,Height\nW1,1,36,60\nW2,x,36 1/0,60\n,1,36,60\nW4,1,36,\n");
    ASSERT_EQ(reading.rows.size(), 1U);
    ASSERT_EQ(reading.rejected.size(), 4U);
    EXPECT_EQ(reading.rejectedRows(), 3);
    EXPECT_EQ(reading.rejected[0].line, 3);
    EXPECT_EQ(reading.rejected[0].column, "Qty");
    EXPECT_EQ(reading.rejected[0].text, "x");
    EXPECT_EQ(reading.rejected[1].column, "Width");
    EXPECT_EQ(reading.rejected[1].text, "36 1/0");
    EXPECT_THAT(reading.rejected[1].reason, HasSubstr("divides by zero"));
    EXPECT_EQ(reading.rejected[2].line, 4);
    EXPECT_EQ(reading.rejected[2].column, "Mark");
    EXPECT_EQ(reading.rejected[3].line, 5);
    EXPECT_EQ(reading.rejected[3].column, "Height");
    EXPECT_THAT(reading.rejected[3].reason, HasSubstr("height is needed"));
}

TEST_F(WindowSchedule, RejectsAbsurdSizes) {
    EXPECT_THAT(rejectedAt("Mark,Width,Height\nW1,3,5\n"), HasSubstr("numbers in feet"));
    EXPECT_THAT(rejectedAt("Mark,Width,Height\nW1,-36,60\n"), HasSubstr("negative"));
    EXPECT_THAT(rejectedAt("Mark,Width,Height\nW1,400',60\n"), HasSubstr("300 ft"));
    EXPECT_THAT(rejectedAt("Mark,Width,Height\nW1,50',60\n"), HasSubstr("more than 40'"));
    EXPECT_THAT(rejectedAt("Mark,Size,Qty\nW1,3050,501\n"), HasSubstr("Qty"));
}

TEST_F(WindowSchedule, RejectsUnknownWords) {
    EXPECT_THAT(
        rejectedAt("Mark,Size,Trim\nW1,3050,fancy\n"), HasSubstr("\"fancy\" is no trim style"));
    EXPECT_THAT(
        rejectedAt("Mark,Size,Casing\nW1,3050,oak 9\n"), HasSubstr("no one casing profile"));
    EXPECT_THAT(rejectedAt("Mark,Size,Casing\nW1,3050,casing\n"), HasSubstr("no one casing"))
        << "two profiles hold that word";
    EXPECT_EQ(one("Mark,Size,Casing\nW1,3050,flat\n").casing, profile("Flat casing"));
}

TEST_F(WindowSchedule, RejectsASecondOfTheSameMark) {
    Opening present;
    present.mark = "w9";
    put(present);
    EXPECT_THAT(rejectedAt("Mark,Size\nW9,3050\n"),
        HasSubstr("The plan has an opening of this mark already"));
    read("Mark,Size\nW1,3050\nW2,3050\nw1,2030\n");
    EXPECT_EQ(reading.rows.size(), 2U);
    EXPECT_THAT(reading.rejected[0].reason, HasSubstr("Line 2 has this mark"));
}

TEST_F(WindowSchedule, ADoorsMarkIsTakenToo) {
    Opening door;
    door.kind = OpeningKind::prehungDoor;
    door.mark = "A";
    put(door);
    EXPECT_THAT(rejectedAt("Mark,Size\nA,3050\n"), HasSubstr("has an opening of this mark"));
}

TEST_F(WindowSchedule, MarksOfElevationsAreFree) {
    Opening other;
    other.mark = "W1";
    Variant variant;
    other.variant = put(variant);
    put(other);
    EXPECT_EQ(one("Mark,Size\nW1,3050\n").mark, "W1");
}

TEST_F(WindowSchedule, SkipsWhatIsNoRow) {
    read("WINDOW SCHEDULE,,\nMark,Size,Room\nMAIN LEVEL,,\nW1,3050,\nMark,Size,Room\nUpper,,\n"
         "W2,3050,\nTotal,2,\nNotes: see elevations,,\n");
    ASSERT_EQ(reading.rows.size(), 2U);
    EXPECT_EQ(reading.rows[0].line, 4);
    EXPECT_TRUE(reading.rejected.empty());
    std::vector<int> lines;
    for (const SkippedLine& each : reading.skipped)
        lines.push_back(each.line);
    EXPECT_THAT(lines, ElementsAre(1, 3, 5, 6, 8, 9));
    EXPECT_EQ(reading.rows[1].opening->level, upper) << "the title above says so";
}

TEST_F(WindowSchedule, ALoneMarkIsARowWithoutASize) {
    EXPECT_EQ(rejectedAt("Mark,Size,Room\nW7,,\n"), "line 2, Size, \"\": A width is needed.");
}

TEST_F(WindowSchedule, LeavesUnknownRoomsAndLevelsUnset) {
    read("Mark,Size,Room,Level\nW1,3050,Den,Loft\nW2,3050,101 Kitchen,\nW3,3050,,upper\n");
    ASSERT_EQ(reading.rows.size(), 3U);
    EXPECT_FALSE(reading.rows[0].opening->room);
    EXPECT_EQ(reading.rows[0].opening->level, main) << "the target's";
    EXPECT_EQ(reading.rows[1].opening->room, kitchen);
    EXPECT_EQ(reading.rows[2].opening->level, upper);
    EXPECT_THAT(reading.missingLevels, ElementsAre("Loft"));
    EXPECT_THAT(reading.remarks,
        ElementsAre("line 2, W1: the plan has no one level \"Loft\"; left without it.",
            "line 2, W1: the plan has no one room \"Den\"; left without it."));
}

TEST_F(WindowSchedule, SaysNothingOfRejectedRowsInRemarks) {
    read("Mark,Size,Room\nW1,oops,Den\n");
    EXPECT_TRUE(reading.remarks.empty());
    EXPECT_EQ(reading.rejected.size(), 1U);
}

TEST_F(WindowSchedule, SaysWhichColumnsAreMissing) {
    read("Width,Glass\n36,clear\n");
    EXPECT_TRUE(reading.rows.empty());
    EXPECT_EQ(reading.missingSentence(),
        "The schedule of windows has no column for mark and none for "
        "size (or width and height); its columns are \"Width\", "
        "\"Glass\".");
    EXPECT_THAT(reading.unmapped, ElementsAre("Glass"));
}

TEST_F(WindowSchedule, ReadsTheDialects) {
    const auto bom = one("\xEF\xBB\xBFMark;Qty;Size\r\nW1;1;36½ x 60\r\n");
    EXPECT_EQ(bom.width, Length::sixteenths(584));
    const auto latin = one("Mark;Qty;Size;Room\rW1;1;36\xBD x 60;caf\xE9\r");
    EXPECT_EQ(latin.width, Length::sixteenths(584));
    EXPECT_THAT(reading.remarks[0], HasSubstr("café"));
    const auto quoted = one(
        "\"Mark\",\"Size\",\"Notes\"\n\"W1\",\"3'0\"\" x 5'0\"\"\",\"first\nsecond\"\n");
    EXPECT_EQ(quoted.width, Length::feet(3));
    EXPECT_EQ(quoted.note, "first second");
}

TEST_F(WindowSchedule, FormulasStayText) {
    EXPECT_EQ(one("Mark,Size,Notes\n=1+1,3050,=HYPERLINK(A1)\n").note, "=HYPERLINK(A1)");
    EXPECT_EQ(reading.rows[0].opening->mark, "=1+1");
}

TEST_F(WindowSchedule, RandomCellsNeverBreakIt) {
    std::mt19937 random(11);
    const std::string alphabet = "W1357 x'\"/-,;\n½aroch.";
    for (int i = 0; i < 1500; ++i) {
        std::string text = "Mark,Qty,Width,Height,Type,Rise,Room,Level,Wall,Trim\n";
        for (unsigned n = random() % 80; n > 0; --n)
            text += alphabet[random() % alphabet.size()];
        const auto result = readSchedule(kind, text, book, {plan, main});
        EXPECT_TRUE(result.ok() || !result.error().sentence.empty());
        for (std::size_t j = 0; result && j < result->rejected.size(); ++j)
            EXPECT_FALSE(result->rejected[j].reason.empty());
    }
}

} // namespace

} // namespace miterbook
