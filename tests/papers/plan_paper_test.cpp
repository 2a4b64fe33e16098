// SPDX-License-Identifier: GPL-3.0-or-later
// The marked plan: what is drawn of rooms and openings, and where its words are set.
#include "plan/outline.h"
#include "sample_job.h"
#include "set_text.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr double margin = 18; // of the floor, outside of the outermost walls

Outline box(double x, double y, double w, double h) {
    const auto in = [](double a, double b) {
        return PlanPoint{Length::fromInches(a), Length::fromInches(b)};
    };
    return {in(x, y), in(x + w, y), in(x + w, y + h), in(x, y + h)};
}

/// A great room and, behind a wall on its right, a hall 3 ft wide.
class MarkedPlan : public testing::Test {
protected:
    MarkedPlan() {
        WholePlan& whole = m_sample.figures.whole;
        whole.rooms.clear();
        whole.openings.clear();
        addRoom(1, "Great room", box(0, 0, 144, 120));
        addRoom(2, "Back hall", box(148.5, 0, 36, 120));
    }

    void addRoom(int id, const std::string& name, Outline outline) {
        Room room;
        room.id = Id<Room>(id);
        room.level = m_sample.ground;
        room.name = name;
        EXPECT_TRUE(setOutline(room, std::move(outline)));
        m_sample.figures.whole.rooms.push_back(std::move(room));
    }
    Opening& add(OpeningKind kind, int wall, double along, double width) {
        Opening& opening = m_sample.figures.whole.openings.emplace_back();
        opening.id = Id<Opening>(static_cast<int>(m_sample.figures.whole.openings.size()));
        opening.level = m_sample.ground;
        opening.room = Id<Room>(1);
        opening.mark = "X1";
        opening.kind = kind;
        opening.wall = wall;
        opening.along = Length::fromInches(along);
        opening.width = Length::fromInches(width);
        opening.height = Length::inches(80);
        return opening;
    }
    Paper paper() const { return planPaper(m_sample.planJob(), m_sample.figures); }
    PaperFloor floor() const {
        for (const Block& block : paper().blocks) {
            if (const auto* found = std::get_if<PaperFloor>(&block))
                return *found;
        }
        ADD_FAILURE() << "no floor is drawn";
        return {};
    }
    /// Whether a wall is drawn across a place of an upright wall.
    static bool isShut(const PaperFloor& floor, double x, double y) {
        return std::ranges::any_of(floor.lines, [&](const PaperFloor::Line& line) {
            return line.weight > 1 && std::abs(line.x1 - margin - x) < 0.01
                && std::abs(line.x2 - margin - x) < 0.01 && std::min(line.y1, line.y2) - margin < y
                && y < std::max(line.y1, line.y2) - margin;
        });
    }
    static PaperFloor::Label labelOf(const PaperFloor& floor, const std::string& text) {
        const auto it = std::ranges::find(floor.labels, text, &PaperFloor::Label::text);
        return it == floor.labels.end() ? PaperFloor::Label{} : *it;
    }

    SampleJob m_sample;
};

TEST_F(MarkedPlan, OpensTheWallsOfBothRoomsAtADoor) {
    EXPECT_TRUE(isShut(floor(), 144, 60));
    add(OpeningKind::prehungDoor, 2, 60, 30).otherRoom = Id<Room>(2);
    const PaperFloor drawn = floor();
    for (const double x : {144.0, 148.5}) {
        EXPECT_FALSE(isShut(drawn, x, 73)) << x; // beside the cross of the saw
        EXPECT_TRUE(isShut(drawn, x, 40)) << x;
        EXPECT_TRUE(isShut(drawn, x, 80)) << x;
    }
}

TEST_F(MarkedPlan, DrawsAStairFromItsFootUp) {
    const std::size_t before = floor().lines.size();
    EXPECT_TRUE(labelOf(floor(), "UP").text.empty());
    Stair stair;
    stair.level = m_sample.ground;
    stair.walkLine = {{Length::inches(20), Length::inches(60)},
        {Length::inches(140), Length::inches(60)}};
    m_sample.figures.whole.stairs.push_back(stair);
    EXPECT_GT(floor().lines.size(), before + 10);
    EXPECT_NEAR(labelOf(floor(), "UP").x - margin, 32, 0.01); // a foot from its foot
}

TEST_F(MarkedPlan, NamesADoorOnItsOwnSideAndAWindowOutside) {
    add(OpeningKind::prehungDoor, 2, 60, 30).otherRoom = Id<Room>(2);
    EXPECT_LT(labelOf(floor(), "X1").x - margin, 144);
    m_sample.figures.whole.openings.clear();
    add(OpeningKind::window, 4, 60, 36);
    EXPECT_LT(labelOf(floor(), "X1").x - margin, 0);
}

TEST_F(MarkedPlan, DrawsNoSwingOfADoorThatSlides) {
    const auto reach = [](const PaperFloor& floor) {
        double most = 0; // into the room from its upper wall; thin lines alone are of the door
        for (const PaperFloor::Line& line : floor.lines) {
            if (line.weight < 1)
                most = std::max({most, line.y1 - margin, line.y2 - margin});
        }
        return most;
    };
    Opening& door = add(OpeningKind::exteriorDoor, 1, 72, 72);
    EXPECT_DOUBLE_EQ(reach(floor()), 0);
    door.hand = Hand::left;
    EXPECT_DOUBLE_EQ(reach(floor()), 72);
    door.kind = OpeningKind::doubleDoor;
    EXPECT_DOUBLE_EQ(reach(floor()), 36);
    door.kind = OpeningKind::bifoldDoor;
    EXPECT_DOUBLE_EQ(reach(floor()), 18);
}

TEST_F(MarkedPlan, SetsANameInTwoLinesWhereItsRoomIsNarrow) {
    addRoom(3, "House", box(0, 124.5, 144, 480)); // so long that the hall is narrow on paper
    Device device;
    const PaperPainter painter(paper(), *device);
    const SetPage& page = painter.set().page(painter.set().pageCount() - 1);
    EXPECT_EQ(countOf(page, QStringLiteral("Great room")), 1);
    EXPECT_EQ(countOf(page, QStringLiteral("Back hall")), 0);
    EXPECT_EQ(countOf(page, QStringLiteral("Back")), 1);
    EXPECT_EQ(countOf(page, QStringLiteral("hall")), 1);
}

} // namespace
} // namespace miterbook
