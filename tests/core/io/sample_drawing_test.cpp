// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/file_bytes.h"
#include "io/plan_text.h"
#include "plan/flight.h"
#include "plan/place.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>
#include <set>

namespace miterbook {

namespace {

/// A rectangle along the axes, in inches.
struct Box {
    double x0 = 0;
    double y0 = 0;
    double x1 = 0;
    double y1 = 0;
};

bool enclosesInches(const Outline& outline, double x, double y) {
    return encloses(outline, {Length::fromInches(x), Length::fromInches(y)});
}

/// Whether an outline whose walls all run along the axes covers any of a box: looked at in the
/// middle of each cell that the corners of both make.
bool covers(const Outline& outline, const Box& box) {
    std::set<double> xs{box.x0, box.x1};
    std::set<double> ys{box.y0, box.y1};
    for (const PlanPoint& corner : outline) {
        xs.insert(std::clamp(corner.x.toInches(), box.x0, box.x1));
        ys.insert(std::clamp(corner.y.toInches(), box.y0, box.y1));
    }
    for (auto x = xs.begin(); std::next(x) != xs.end(); ++x) {
        for (auto y = ys.begin(); std::next(y) != ys.end(); ++y) {
            if (enclosesInches(
                    outline, std::midpoint(*x, *std::next(x)), std::midpoint(*y, *std::next(y))))
                return true;
        }
    }
    return false;
}

/// An outline along the axes as boxes that do not lie over one another.
std::vector<Box> boxesOf(const Outline& outline) {
    std::set<double> xs;
    std::set<double> ys;
    for (const PlanPoint& corner : outline) {
        xs.insert(corner.x.toInches());
        ys.insert(corner.y.toInches());
    }
    std::vector<Box> boxes;
    for (auto x = xs.begin(); std::next(x) != xs.end(); ++x) {
        for (auto y = ys.begin(); std::next(y) != ys.end(); ++y) {
            const Box box{*x, *y, *std::next(x), *std::next(y)};
            if (covers(outline, box))
                boxes.push_back(box);
        }
    }
    return boxes;
}

/// The strip of that depth outside of an opening.
Box outsideOf(const Room& room, const Opening& opening, double depth) {
    const auto place = placeIn(room, opening);
    const PlanPoint a = pointOn(room.outline, place->wall, opening.along - opening.width / 2);
    const PlanPoint b = pointOn(room.outline, place->wall, opening.along + opening.width / 2);
    const double length = opening.width.toInches();
    // Out of the room is to the left of a wall's direction.
    const double outX = (b - a).y.toInches() / length * depth;
    const double outY = -(b - a).x.toInches() / length * depth;
    const auto [x0, x1] = std::minmax(
        {a.x.toInches(), b.x.toInches(), a.x.toInches() + outX, b.x.toInches() + outX});
    const auto [y0, y1] = std::minmax(
        {a.y.toInches(), b.y.toInches(), a.y.toInches() + outY, b.y.toInches() + outY});
    return {x0, y0, x1, y1};
}

/// Whether a wall of one room faces a wall of the other across the thickness of a wall.
bool adjoin(const Room& room, const Room& other) {
    for (std::size_t i = 0; i < room.walls.size(); ++i) {
        for (Length along = Length::inches(6); along < room.walls[i].length;
             along += Length::inches(6)) {
            if (across(room.outline, {i, along, {}}, other.outline))
                return true;
        }
    }
    return false;
}

/// The two-storey sample plan as it is drawn: plain, with each elevation, and with the basement.
class SampleDrawing : public ::testing::TestWithParam<const char*> {
protected:
    SampleDrawing() {
        const auto text = readFileBytes(
            std::string(MITERBOOK_SOURCE_DIR) + "/sample-jobs/larkspur/larkspur.miterplan");
        EXPECT_TRUE(text.ok());
        IdSource ids;
        Book book;
        const auto edit = readPlanText(book, ids, text ? *text : std::string());
        EXPECT_TRUE(edit.ok()) << (edit ? "" : edit.error().sentence);
        if (!edit)
            return;
        apply(book, *edit);
        const Plan& plan = book.jobs.of<Plan>().begin()->second;
        Selection selection;
        for (const auto& [id, variant] : book.sheet(plan.id).of<Variant>()) {
            if (variant.name != GetParam())
                continue;
            if (variant.kind == VariantKind::elevation)
                selection.elevation = id;
            else
                selection.options.push_back(id);
        }
        m_whole = wholePlan(plan, book.sheet(plan.id), selection);
    }

    double area(const std::string& level) const {
        double sum = 0;
        for (const Room& room : m_whole.rooms) {
            if (m_whole.level(room.level)->name == level)
                sum += areaOf(room.outline).toDouble();
        }
        return sum;
    }

    WholePlan m_whole;
};

TEST_P(SampleDrawing, DrawsEveryRoomOnce) {
    ASSERT_FALSE(m_whole.rooms.empty());
    for (const Room& room : m_whole.rooms) {
        ASSERT_FALSE(room.outline.empty()) << room.name;
        const std::vector<Box> boxes = boxesOf(room.outline);
        for (const Room& other : m_whole.rooms) {
            if (other.id == room.id || other.level != room.level)
                continue;
            for (const Box& box : boxes)
                EXPECT_FALSE(covers(other.outline, box))
                    << room.name << " lies over " << other.name;
        }
    }
}

TEST_P(SampleDrawing, RoomsOfALevelHangTogether) {
    for (const Level& level : m_whole.levels) {
        std::vector<const Room*> apart;
        for (const Room& room : m_whole.rooms) {
            if (room.level == level.id)
                apart.push_back(&room);
        }
        ASSERT_FALSE(apart.empty()) << level.name;
        std::vector<const Room*> reached{apart.back()};
        apart.pop_back();
        for (std::size_t i = 0; i < reached.size(); ++i) {
            const auto rest = std::ranges::partition(
                apart, [&](const Room* room) { return !adjoin(*reached[i], *room); });
            reached.insert(reached.end(), rest.begin(), rest.end());
            apart.erase(rest.begin(), rest.end());
        }
        for (const Room* room : apart)
            ADD_FAILURE() << room->name << " stands apart from its level";
    }
}

TEST_P(SampleDrawing, EachOpeningStandsInAWallOfItsRoom) {
    ASSERT_FALSE(m_whole.openings.empty());
    const Length casing = Length::inches(3.25) + Length::sixteenths(3); // with its reveal
    for (const Opening& opening : m_whole.openings) {
        const Room* room = m_whole.room(opening.room);
        ASSERT_TRUE(room) << opening.mark;
        EXPECT_EQ(opening.count, 1) << opening.mark;
        const auto place = placeIn(*room, opening);
        ASSERT_TRUE(place) << opening.mark;
        const Length half = opening.width / 2 + casing;
        EXPECT_GE(opening.along, half) << opening.mark;
        EXPECT_LE(opening.along + half, room->walls[place->wall].length) << opening.mark;
        if (const Room* behind = m_whole.room(opening.otherRoom)) {
            const auto there = placeInOther(*room, *behind, opening);
            ASSERT_TRUE(there) << opening.mark << " does not lead to " << behind->name;
            EXPECT_GE(there->along, half) << opening.mark;
            EXPECT_LE(there->along + half, behind->walls[there->wall].length) << opening.mark;
        }
    }
}

TEST_P(SampleDrawing, OpeningsOfAWallAreApart) {
    for (const Opening& opening : m_whole.openings) {
        for (const Opening& other : m_whole.openings) {
            if (other.id == opening.id || other.room != opening.room || other.wall != opening.wall)
                continue;
            const Length off = other.along - opening.along;
            EXPECT_GT(std::max(off, -off), (opening.width + other.width) / 2)
                << opening.mark << " and " << other.mark;
        }
    }
}

TEST_P(SampleDrawing, WindowsAndOutsideDoorsLookOut) {
    constexpr double outside = 48; // inches that nothing else may stand in
    for (const Opening& opening : m_whole.openings) {
        if (!opening.isWindow() && opening.kind != OpeningKind::exteriorDoor)
            continue;
        const Room& room = *m_whole.room(opening.room);
        const Box strip = outsideOf(room, opening, outside);
        for (const Room& other : m_whole.rooms) {
            const bool inTheWay = other.level == room.level && covers(other.outline, strip);
            EXPECT_FALSE(inTheWay) << opening.mark << ": " << other.name;
        }
    }
}

TEST_P(SampleDrawing, RoomsAreAsLargeAsThePlanSays) {
    // Walls and stairwell take about an eighth of a floor area measured to the outside.
    const double drawn = area("Main") + area("Upper");
    EXPECT_GT(drawn, 0.82 * m_whole.plan.floorArea);
    EXPECT_LT(drawn, 0.92 * m_whole.plan.floorArea);
    EXPECT_NEAR(area("Main"), area("Upper"), 150);
}

TEST_P(SampleDrawing, TheMainStairStandsInItsHall) {
    const auto stair = std::ranges::find(m_whole.stairs, "Main stair", &Stair::name);
    ASSERT_NE(stair, m_whole.stairs.end());
    const Room* hall = m_whole.room(stair->room);
    ASSERT_TRUE(hall);
    const FlightDrawing flight = flightOf(*stair);
    ASSERT_EQ(flight.parts.size(), 1U);
    for (const PlanPoint& corner : flight.parts[0])
        EXPECT_TRUE(encloses(hall->outline, corner));
    // IRC R311.7.5.2 [pub, from memory]: treads of 10 in at least.
    const Length run = distance(stair->walkLine.front(), stair->walkLine.back());
    EXPECT_GE(run, Length::inches(10) * (stair->risers - 1));
}

INSTANTIATE_TEST_SUITE_P(All, SampleDrawing,
    ::testing::Values("Plain", "A", "B", "C", "Finished basement", "Reversed"),
    [](const auto& with) {
        std::string name = with.param;
        std::erase(name, ' ');
        return name;
    });

} // namespace

} // namespace miterbook
