// SPDX-License-Identifier: GPL-3.0-or-later
// The marked plan, line by line: what is drawn has the lengths that were said.
#include "papers/job_papers.h"
#include "papers/write_paper.h"
#include "plan/outline.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace miterbook;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

constexpr Id<Level> ground{4};
constexpr double wallWeight = 1.3;
constexpr double bareWeight = 0.5;
constexpr double rim = 18; // about what is drawn

PlanPoint in(double x, double y) {
    return {Length::fromInches(x), Length::fromInches(y)};
}

Room room(std::int64_t id, const char* name, const Outline& outline) {
    Room row;
    row.id = Id<Room>(id);
    row.level = ground;
    row.name = name;
    EXPECT_TRUE(setOutline(row, outline).ok());
    return row;
}

/// 12 by 10 ft.
Room den() {
    return room(10, "Den", {in(0, 0), in(144, 0), in(144, 120), in(0, 120)});
}

Opening opening(const char* mark, OpeningKind kind, int wall, int along, int width) {
    Opening row;
    row.id = Id<Opening>(100 + wall);
    row.level = ground;
    row.room = Id<Room>(10);
    row.mark = mark;
    row.kind = kind;
    row.width = Length::inches(width);
    row.height = Length::inches(80);
    row.wall = wall;
    row.along = Length::inches(along);
    return row;
}

class MarkedPlan : public testing::Test {
protected:
    MarkedPlan() {
        Level level;
        level.id = ground;
        level.name = "Ground";
        m_figures.whole.levels.push_back(level);
        m_figures.whole.rooms.push_back(den());
    }

    Room& denRoom() { return m_figures.whole.rooms.front(); }
    void add(const Opening& opening) { m_figures.whole.openings.push_back(opening); }
    Paper paper(Id<Level> level = {}) const {
        return planPaper({m_book, Id<Plan>(), Id<House>(), level, noDate}, m_figures);
    }
    PaperFloor floor() const {
        for (const Block& block : paper().blocks) {
            if (const auto* found = std::get_if<PaperFloor>(&block))
                return *found;
        }
        ADD_FAILURE() << "nothing is drawn";
        return {};
    }

    Book m_book;
    JobFigures m_figures;
};

double lengthOf(const PaperFloor::Line& line) {
    return std::hypot(line.x2 - line.x1, line.y2 - line.y1);
}

/// Of all lines of one weight, but for the saw's cross.
double lengthOf(const PaperFloor& floor, double weight) {
    double sum = 0;
    for (const PaperFloor::Line& line : floor.lines) {
        if (line.weight == weight && std::abs(lengthOf(line) - 20) > 1e-6)
            sum += lengthOf(line);
    }
    return sum;
}

const PaperFloor::Label& labelOf(const PaperFloor& floor, const std::string& text) {
    for (const PaperFloor::Label& label : floor.labels) {
        if (label.text == text)
            return label;
    }
    ADD_FAILURE() << text << " is not written on the plan";
    static const PaperFloor::Label none;
    return none;
}

TEST_F(MarkedPlan, HasTheWallsWithoutTheirOpenings) {
    EXPECT_DOUBLE_EQ(lengthOf(floor(), wallWeight), 2 * (144 + 120));
    EXPECT_DOUBLE_EQ(floor().width, 144 + 2 * rim);
    EXPECT_DOUBLE_EQ(floor().height, 120 + 2 * rim);
    add(opening("W1", OpeningKind::window, 1, 72, 36));
    add(opening("D1", OpeningKind::prehungDoor, 3, 40, 30));
    EXPECT_NEAR(lengthOf(floor(), wallWeight), 2 * (144 + 120) - 36 - 30, 1e-6);
}

TEST_F(MarkedPlan, DrawsWallsWithoutBaseThin) {
    denRoom().walls[0].base = false;
    EXPECT_DOUBLE_EQ(lengthOf(floor(), bareWeight), 144);
    EXPECT_DOUBLE_EQ(lengthOf(floor(), wallWeight), 144 + 2 * 120);
}

TEST_F(MarkedPlan, ADoorSwingsFromItsHingeToItsLatch) {
    Opening door = opening("D1", OpeningKind::prehungDoor, 1, 60, 30);
    for (const Hand hand : {Hand::left, Hand::right}) {
        m_figures.whole.openings.clear();
        door.hand = hand;
        add(door);
        const PaperFloor drawn = floor();
        // The swing is the only thin line: a quarter of a circle as wide as the door, in eight.
        EXPECT_NEAR(lengthOf(drawn, bareWeight), 30 * std::acos(-1) / 2, 0.2);
        const PaperFloor::Line* last = nullptr;
        for (const PaperFloor::Line& line : drawn.lines) {
            if (line.weight == bareWeight)
                last = &line;
        }
        ASSERT_NE(last, nullptr);
        EXPECT_NEAR(last->x2, rim + (hand == Hand::right ? 60 - 15 : 60 + 15), 1e-6);
        EXPECT_NEAR(last->y2, rim, 1e-6) << "it ends in the wall";
    }
}

TEST_F(MarkedPlan, AWindowIsThreeLinesAcrossAndASlidingDoorTwoLeaves) {
    const auto across = [](const PaperFloor& floor, double width) {
        return std::ranges::count_if(floor.lines, [width](const PaperFloor::Line& line) {
            return std::abs(lengthOf(line) - width) < 1e-6 && line.y1 == line.y2;
        });
    };
    add(opening("W1", OpeningKind::window, 1, 72, 36));
    EXPECT_EQ(across(floor(), 36), 3);
    m_figures.whole.openings.clear();
    add(opening("D1", OpeningKind::bypassDoor, 1, 72, 36));
    EXPECT_EQ(across(floor(), 36), 0);
    EXPECT_EQ(across(floor(), 19.8), 2); // half of it and a tenth over the middle
}

TEST_F(MarkedPlan, MarksStandOutsideOfTheWallAndNamesInTheRoom) {
    add(opening("W1", OpeningKind::window, 1, 72, 36));
    const PaperFloor drawn = floor();
    EXPECT_DOUBLE_EQ(labelOf(drawn, "W1").x, rim + 72);
    EXPECT_LT(labelOf(drawn, "W1").y, rim);
    EXPECT_TRUE(labelOf(drawn, "Den").bold);
}

TEST_F(MarkedPlan, ANameStandsInsideARoomWithACornerOut) {
    // An L whose middle is not in it: 20 by 20 ft without a 16 by 16 ft corner.
    const Outline outline{in(0, 0), in(240, 0), in(240, 48), in(48, 48), in(48, 240), in(0, 240)};
    denRoom() = room(10, "Hall", outline);
    const PaperFloor drawn = floor();
    const PaperFloor::Label& name = labelOf(drawn, "Hall");
    EXPECT_TRUE(encloses(outline, in(name.x - rim, name.y - rim))) << name.x << ", " << name.y;
    // 20 x 4 ft and 4 x 16 ft
    EXPECT_THAT(drawn.entries, Contains(testing::Field(&PaperFloor::Entry::size, "144 sq ft")));
}

TEST_F(MarkedPlan, CabinetsStandTwoFeetIntoTheRoom) {
    denRoom().breaks.push_back({1, Length::inches(12), Length::inches(60), BreakKind::cabinets});
    const PaperFloor drawn = floor();
    const auto front = std::ranges::find_if(drawn.lines,
        [](const PaperFloor::Line& line) { return std::abs(lengthOf(line) - 60) < 1e-6; });
    ASSERT_NE(front, drawn.lines.end());
    EXPECT_NEAR(front->y1, rim + 24, 1e-6);
    EXPECT_NEAR(std::min(front->x1, front->x2), rim + 12, 1e-6);
    denRoom().breaks.front().wall = 9; // of a room that has been drawn anew with fewer walls
    EXPECT_EQ(floor().lines.size(), 4U + (drawn.lines.size() - 4U - 3U));
}

TEST_F(MarkedPlan, SaysInWordsWhatIsOnIt) {
    add(opening("W1", OpeningKind::window, 1, 72, 36));
    const std::string text = paperText(paper());
    EXPECT_THAT(text, HasSubstr("Marked plan"));
    EXPECT_THAT(text, HasSubstr("12' 0\" x 10' 0\""));
    const PaperTable table = asTable(floor());
    std::vector<std::string> window;
    for (const Cell& cell : table.rows[1].cells)
        window.push_back(cell.text);
    EXPECT_THAT(window, ElementsAre("W1", "36 x 80", "Den"));
}

TEST_F(MarkedPlan, SaysWhereTheSawStandsBest) {
    Opening door = opening("D1", OpeningKind::prehungDoor, 1, 72, 30);
    door.style = TrimStyle::threeSided;
    door.sidesCased = 2;
    add(door);
    const PaperFloor drawn = floor();
    const PaperFloor::Label& saw = labelOf(drawn, "SAW");
    EXPECT_TRUE(encloses(denRoom().outline, in(saw.x - rim, saw.y - 18 - rim)));
    EXPECT_THAT(
        drawn.entries, Contains(testing::Field(&PaperFloor::Entry::what, "Saw stands best")));
}

TEST_F(MarkedPlan, HeedsTheLevelAndSaysWhereNothingIsDrawn) {
    EXPECT_TRUE(tableIn(paper(ground).blocks.back()));
    EXPECT_FALSE(tableIn(paper(Id<Level>(5)).blocks.back()));
    EXPECT_THAT(paperText(paper(Id<Level>(5))), HasSubstr("No room of this plan is drawn yet."));
    denRoom().outline.clear();
    EXPECT_THAT(paperText(paper()), HasSubstr("No room of this plan is drawn yet."));
}

} // namespace
