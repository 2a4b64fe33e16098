// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing with real presses and keys: rooms, openings in their walls, what stands against
// walls, marks, each one edit that undo takes back.
#include "desk/figure_desk.h"
#include "stages/plan/drawing/differences_menu.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/plan_stage.h"
#include "stages/plan/plan_tables.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

constexpr Length feetOf(int feet, int inches = 0) {
    return Length::inches(feet * 12 + inches);
}

/// A new plan of one level on the page, seen at 2 pixels to the inch.
class PlanDrawing : public testing::Test {
protected:
    PlanDrawing()
        : m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures) {
        Plan plan = *m_kit.book().plan(m_kit.plan());
        plan.id = m_kit.desk().ids().next<Plan>();
        plan.name = "Drawn";
        Level level;
        level.id = m_kit.desk().ids().next<Level>();
        level.plan = plan.id;
        level.name = "Main";
        EXPECT_TRUE(m_kit.desk().perform(
            EditBuilder(m_kit.book(), "Begin plan Drawn").put(plan).put(level).take()));
        EXPECT_TRUE(m_kit.desk().openPlan(plan.id));
        m_plan = plan.id;
        m_figures.setJob({plan.id, {}, {}});
        m_figures.stopSearch();
        m_stage.showJob(m_figures.job());
        m_page = m_stage.page();
        m_page->resize(1500, 1000);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page));
        m_panel = m_page->findChild<PlanPanel*>();
        m_typed = nullptr;
        for (QLineEdit* line : m_panel->findChildren<QLineEdit*>()) {
            if (line->accessibleName() == u"Typed for the drawing"_s)
                m_typed = line;
        }
    }
    ~PlanDrawing() override { m_figures.stopSearch(); }

    PlanView& view() const { return m_panel->view(); }
    const PlanRows& rows() const { return m_kit.book().sheet(m_plan); }
    const Room& room(std::size_t n = 0) const {
        return std::next(rows().of<Room>().begin(), static_cast<long>(n))->second;
    }
    const Opening& opening(std::size_t n = 0) const {
        return std::next(rows().of<Opening>().begin(), static_cast<long>(n))->second;
    }
    const Stair& stair() const { return rows().of<Stair>().begin()->second; }
    QPoint at(double x, double y) const { return view().frame().toScreen(QPointF(x, y)).toPoint(); }
    void click(double x, double y, Qt::KeyboardModifiers keys = {}) {
        QTest::mouseClick(&view(), Qt::LeftButton, keys, at(x, y));
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(&view(), Qt::LeftButton, {}, from);
        QTest::mouseMove(&view(), (from + to) / 2);
        QTest::mouseMove(&view(), to);
        QTest::mouseRelease(&view(), Qt::LeftButton, {}, to);
    }
    void key(int key, Qt::KeyboardModifiers keys = {}) {
        QTest::keyClick(&view(), static_cast<Qt::Key>(key), keys);
    }
    void type(const QString& words) {
        m_typed->setFocus();
        m_typed->selectAll();
        QTest::keyClicks(m_typed, words);
        QTest::keyClick(m_typed, Qt::Key_Return);
    }
    /// A room of 12 x 10 ft, its corner at the view's zero, by keys alone.
    void drawDen() {
        key(Qt::Key_R);
        type(u"12' x 10'"_s);
        type(u"Den"_s);
        key(Qt::Key_Escape);
        view().fitAll();
    }
    QString refused() const { return m_kit.refused(); }

    UiKit m_kit;
    Id<Plan> m_plan;
    FigureDesk m_figures;
    PlanStage m_stage;
    QWidget* m_page = nullptr;
    PlanPanel* m_panel = nullptr;
    QLineEdit* m_typed = nullptr;
};

TEST_F(PlanDrawing, ARoomIsDrawnByAPullAndNamedAtOnce) {
    key(Qt::Key_R);
    drag({100, 60}, {400, 300});
    ASSERT_EQ(rows().of<Room>().size(), 1U) << refused().toStdString();
    EXPECT_EQ(room().outline.size(), 4U);
    EXPECT_EQ(room().walls.size(), 4U);
    EXPECT_EQ(QApplication::focusWidget(), m_typed);
    QTest::keyClicks(m_typed, u"Primary bath"_s);
    QTest::keyClick(m_typed, Qt::Key_Return);
    EXPECT_EQ(room().name, "Primary bath");
    EXPECT_EQ(room().use, RoomUse::bath);
    const int steps = m_kit.desk().undoStack().index();
    m_kit.desk().undoStack().undo();
    m_kit.desk().undoStack().undo();
    EXPECT_TRUE(rows().of<Room>().empty());
    EXPECT_EQ(m_kit.desk().undoStack().index(), steps - 2);
}

TEST_F(PlanDrawing, ARoomIsDrawnByKeysAlone) {
    drawDen();
    ASSERT_EQ(rows().of<Room>().size(), 1U) << refused().toStdString();
    EXPECT_EQ(room().walls[0].length, feetOf(12));
    EXPECT_EQ(room().walls[1].length, feetOf(10));
    key(Qt::Key_P);
    for (const auto& [way, length] :
        {std::pair(Qt::Key_Right, u"8'"_s), {Qt::Key_Down, u"6'6"_s}, {Qt::Key_Left, u"8'"_s}}) {
        key(way, Qt::ShiftModifier);
        type(length);
    }
    m_typed->setFocus();
    QTest::keyClick(m_typed, Qt::Key_Return); // nothing typed: it is done
    ASSERT_EQ(rows().of<Room>().size(), 2U) << refused().toStdString();
    EXPECT_EQ(room(1).walls[0].length, feetOf(8));
    EXPECT_EQ(room(1).walls[1].length, feetOf(6, 6));
}

TEST_F(PlanDrawing, OpeningsStandWhereTheWallIsClicked) {
    drawDen();
    const PlanPoint corner = room().outline.front();
    const double x = corner.x.toInches();
    const double y = corner.y.toInches();
    key(Qt::Key_W);
    type(u"36 x 60"_s);
    click(x + 60, y);
    ASSERT_EQ(rows().of<Opening>().size(), 1U) << refused().toStdString();
    EXPECT_EQ(opening().mark, "W1");
    EXPECT_EQ(opening().wall, 1);
    EXPECT_NEAR(opening().along.toInches(), 60, 2);
    EXPECT_EQ(opening().width, Length::inches(36));
    key(Qt::Key_D);
    type(u"2868"_s);
    click(x + 144, y + 50);
    ASSERT_EQ(rows().of<Opening>().size(), 2U) << refused().toStdString();
    EXPECT_EQ(opening(1).kind, OpeningKind::prehungDoor);
    EXPECT_EQ(opening(1).wall, 2);
    EXPECT_EQ(opening(1).room, room().id);
    click(x + 72, y + 60); // the middle of the room is no wall
    EXPECT_EQ(rows().of<Opening>().size(), 2U);
    EXPECT_TRUE(refused().contains(u"wall of a drawn room"_s));
    key(Qt::Key_V);
    key(Qt::Key_Period);
    const auto base = m_figures.figures().takeoff.runs;
    ASSERT_FALSE(base.empty());
    EXPECT_LT(base.front().net, feetOf(44)); // the door is off the base
}

TEST_F(PlanDrawing, ADoorBetweenTwoRoomsKnowsBothAndTheWall) {
    drawDen();
    const PlanPoint corner = room().outline.front();
    key(Qt::Key_R);
    // Beside the den: the wall's thickness is kept by itself.
    drag(at(corner.x.toInches() + 150, corner.y.toInches() + 1),
        at(corner.x.toInches() + 250, corner.y.toInches() + 90));
    ASSERT_EQ(rows().of<Room>().size(), 2U) << refused().toStdString();
    EXPECT_EQ(room(1).outline.front().x - room().outline[1].x, Length::sixteenths(72));
    key(Qt::Key_Escape);
    key(Qt::Key_D);
    type(u"2668"_s);
    click(corner.x.toInches() + 144, corner.y.toInches() + 40);
    ASSERT_EQ(rows().of<Opening>().size(), 1U) << refused().toStdString();
    EXPECT_NE(opening().room, opening().otherRoom);
    EXPECT_TRUE(opening().otherRoom);
    EXPECT_EQ(opening().wallThickness, Length::sixteenths(72));
}

TEST_F(PlanDrawing, WhatIsChosenIsMovedResizedCopiedAndTakenAway) {
    drawDen();
    const Outline before = room().outline;
    view().select({{DrawnItem::Kind::room, room().id.value()}});
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(room().outline.front().x - before.front().x, feetOf(1));
    key(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(rows().of<Room>().size(), 2U);
    EXPECT_NE(room(0).mark, room(1).mark);
    key(Qt::Key_Delete);
    EXPECT_EQ(rows().of<Room>().size(), 1U);
    view().select({{DrawnItem::Kind::room, room().id.value()}});
    type(u"14' x 10'"_s);
    EXPECT_EQ(room().walls[0].length, feetOf(14));
    // The east wall by its handle, two feet out.
    const PlanPoint a = room().outline[1];
    const PlanPoint b = room().outline[2];
    const QPointF middle((a.x + b.x).toInches() / 2, (a.y + b.y).toInches() / 2);
    drag(at(middle.x(), middle.y()), at(middle.x() + 24, middle.y()));
    EXPECT_EQ(room().walls[0].length, feetOf(16)) << refused().toStdString();
    EXPECT_EQ(room().walls[1].length, feetOf(10));
}

TEST_F(PlanDrawing, AWallLosesItsBaseByAKey) {
    drawDen();
    view().select({{DrawnItem::Kind::room, room().id.value()}});
    key(Qt::Key_E);
    key(Qt::Key_E);
    EXPECT_EQ(view().chosenWall(), 1);
    key(Qt::Key_B);
    EXPECT_FALSE(room().walls[1].base);
    EXPECT_TRUE(room().walls[0].base);
    EXPECT_EQ(view().chosenWall(), 1) << "the next key means the same wall";
    key(Qt::Key_K);
    EXPECT_FALSE(room().walls[1].crown);
}

TEST_F(PlanDrawing, CabinetsTakeTheBaseOffWhereTheyStand) {
    drawDen();
    const PlanPoint corner = room().outline.front();
    key(Qt::Key_C);
    drag(at(corner.x.toInches() + 24, corner.y.toInches()),
        at(corner.x.toInches() + 96, corner.y.toInches()));
    ASSERT_EQ(room().breaks.size(), 1U) << refused().toStdString();
    EXPECT_EQ(room().breaks[0].wall, 1);
    EXPECT_NEAR(room().breaks[0].length.toInches(), 72, 3);
    EXPECT_EQ(m_figures.figures().takeoff.runs.at(0).net, feetOf(44) - room().breaks[0].length);
}

TEST_F(PlanDrawing, MarksBecomeALineOfTheTakeoff) {
    drawDen();
    key(Qt::Key_N);
    click(room().outline[0].x.toInches() + 40, room().outline[0].y.toInches() + 40);
    click(room().outline[0].x.toInches() + 80, room().outline[0].y.toInches() + 40);
    ASSERT_EQ(rows().of<OtherWork>().size(), 1U) << refused().toStdString();
    const OtherWork& work = rows().of<OtherWork>().begin()->second;
    EXPECT_EQ(work.quantity, Quantity::count(2));
    EXPECT_EQ(work.room, room().id);
    const auto& tasks = m_figures.figures().takeoff.tasks;
    const auto line = std::ranges::find(
        tasks, Origins(work.id), [](const TaskCount& task) { return task.source.row; });
    ASSERT_NE(line, tasks.end());
    EXPECT_EQ(line->quantity, Quantity::count(2));
}

TEST_F(PlanDrawing, AnOutlineThatCrossesItselfIsRefusedAndKept) {
    key(Qt::Key_P);
    for (const auto& [x, y] : {std::pair(0.0, 0.0), {100.0, 100.0}, {100.0, 0.0}, {0.0, 100.0}})
        click(x, y);
    key(Qt::Key_Return);
    EXPECT_TRUE(rows().of<Room>().empty());
    EXPECT_EQ(view().points().size(), 4U) << "nothing that was clicked is lost";
    EXPECT_TRUE(refused().contains(u"crosses itself"_s)) << refused().toStdString();
}

TEST_F(PlanDrawing, DrawingAndTablesChooseTheSameRow) {
    drawDen();
    view().select({});
    auto* tables = m_page->findChild<PlanTables*>();
    view().select({{DrawnItem::Kind::room, room().id.value()}});
    DataTable* table = tables->currentTable();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->cells().keyOfRow(table->currentRow()), room().id.value());
    view().select({});
    table->setFocus();
    table->goToBlankRow();
    table->showKey(room().id.value());
    EXPECT_EQ(view().selection().count({DrawnItem::Kind::room, room().id.value()}), 1U);
}

TEST_F(PlanDrawing, ThePlanIsMirroredAndALevelRepeated) {
    drawDen();
    key(Qt::Key_D);
    type(u"2668"_s);
    click(room().outline[0].x.toInches() + 40, room().outline[0].y.toInches());
    const Opening before = opening();
    view().mirrorPlan();
    EXPECT_NE(opening().along, before.along);
    view().mirrorPlan();
    EXPECT_EQ(opening(), before);
    view().repeatLevel();
    EXPECT_EQ(rows().of<Level>().size(), 2U);
    EXPECT_EQ(rows().of<Room>().size(), 2U);
    EXPECT_EQ(rows().of<Opening>().size(), 2U);
    EXPECT_TRUE(std::prev(rows().of<Level>().end())->second.upper);
    EXPECT_NE(opening(0).mark, opening(1).mark);
}

TEST_F(PlanDrawing, AStairIsDrawnMovedWidenedMirroredAndTakenAway) {
    drawDen();
    const PlanPoint corner = room().outline.front();
    const double x = corner.x.toInches();
    const double y = corner.y.toInches();
    key(Qt::Key_U);
    click(x + 24, y + 24);
    click(x + 120, y + 24);
    key(Qt::Key_Return);
    ASSERT_EQ(rows().of<Stair>().size(), 1U) << refused().toStdString();
    EXPECT_EQ(stair().walkLine.size(), 2U);
    EXPECT_EQ(stair().room, room().id);
    EXPECT_EQ(view().selection().count({DrawnItem::Kind::stair, stair().id.value()}), 1U);
    ASSERT_EQ(view().picture().stairs.size(), 1U);
    EXPECT_EQ(view().picture().stairs[0].risers.size(), 14U);
    key(Qt::Key_Escape);
    const Stair drawn = stair();
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(stair().walkLine[0].y - drawn.walkLine[0].y, feetOf(1));
    type(u"42"_s);
    EXPECT_EQ(stair().flightWidth, Length::inches(42)) << refused().toStdString();
    type(u"50'"_s);
    EXPECT_EQ(stair().flightWidth, Length::inches(42));
    EXPECT_TRUE(refused().contains(u"flight width"_s)) << refused().toStdString();
    const Stair before = stair();
    view().mirrorPlan();
    EXPECT_NE(stair().walkLine, before.walkLine);
    view().mirrorPlan();
    EXPECT_EQ(stair(), before);
    key(Qt::Key_Delete);
    EXPECT_TRUE(rows().of<Stair>().empty());
    for (int i = 0; i < 5; ++i)
        m_kit.desk().undoStack().undo();
    EXPECT_EQ(stair(), drawn);
}

TEST_F(PlanDrawing, AStairOfTheTableGetsItsPlaceByKeys) {
    drawDen();
    Stair typed;
    typed.id = m_kit.desk().ids().next<Stair>();
    typed.plan = m_plan;
    typed.level = room().level;
    typed.name = "Back stair";
    ASSERT_TRUE(m_kit.desk().perform(EditBuilder(m_kit.book(), "Add stair").put(typed).take()));
    EXPECT_TRUE(view().picture().stairs.empty());
    auto* tables = m_page->findChild<PlanTables*>();
    ASSERT_TRUE(tables->showSource({typed.id, {}, {}, {}}));
    view().select({{DrawnItem::Kind::stair, typed.id.value()}});
    key(Qt::Key_U);
    key(Qt::Key_Down, Qt::ShiftModifier);
    type(u"10'10"_s);
    m_typed->setFocus();
    QTest::keyClick(m_typed, Qt::Key_Return);
    ASSERT_EQ(rows().of<Stair>().size(), 1U);
    EXPECT_EQ(stair().name, "Back stair");
    ASSERT_EQ(stair().walkLine.size(), 2U) << refused().toStdString();
    EXPECT_EQ(distance(stair().walkLine[0], stair().walkLine[1]), Length::inches(130));
    view().repeatLevel(); // above it the stair comes up
    m_panel->showSource({room(1).id, {}, {}, {}});
    EXPECT_NE(view().level().level(), stair().level);
    EXPECT_TRUE(view().picture().stairs.empty());
    ASSERT_EQ(view().picture().fromBelow.size(), 1U);
    EXPECT_EQ(view().picture().fromBelow[0].label, u"DN"_s);
}

/// An option of the plan in which W1 is gone and W2 is new.
TEST_F(PlanDrawing, WhatAnOptionDoesIsMarkedForWhoLooksAtItAndForWhoChangesIt) {
    drawDen();
    key(Qt::Key_W);
    type(u"36 x 60"_s);
    click(room().outline[0].x.toInches() + 60, room().outline[0].y.toInches());
    key(Qt::Key_Escape);
    ASSERT_EQ(rows().of<Opening>().size(), 1U);
    Variant option;
    option.id = m_kit.desk().ids().next<Variant>();
    option.plan = m_plan;
    option.name = "Sun room";
    Opening gone = opening();
    gone.replaces = gone.id;
    gone.id = m_kit.desk().ids().next<Opening>();
    gone.variant = option.id;
    gone.removed = true;
    Opening added = opening();
    added.id = m_kit.desk().ids().next<Opening>();
    added.variant = option.id;
    added.mark = "W2";
    added.wall = 3;
    ASSERT_TRUE(m_kit.desk().perform(
        EditBuilder(m_kit.book(), "Add option").put(option).put(gone).put(added).take()));
    EXPECT_TRUE(view().picture().differences.names.isEmpty()) << "nobody looks at it yet";
    EXPECT_EQ(view().picture().openings.at(0).mark, RowMark::plain);

    auto* menu = m_page->findChild<DifferencesMenu*>();
    m_panel->setSeen({});
    ASSERT_TRUE(menu->isNeeded());
    menu->menu()->actions().at(0)->trigger();
    const PlanPicture& seen = view().picture();
    EXPECT_EQ(seen.differences.names, QStringList{u"option Sun room"_s});
    EXPECT_EQ(seen.differences.added, 1);
    EXPECT_EQ(seen.differences.removed, 1);
    ASSERT_EQ(seen.openings.size(), 1U);
    EXPECT_EQ(seen.openings[0].mark, RowMark::removed);
    ASSERT_EQ(seen.apart.openings.size(), 1U);
    EXPECT_EQ(seen.apart.openings[0].label, u"W2"_s);
    EXPECT_EQ(seen.apart.openings[0].mark, RowMark::added);
    EXPECT_TRUE(view().level().opening(gone.replaces.value())) << "the base plan still has it";

    // What changes go into is looked at too, with the same counts, and can be taken hold of.
    m_panel->setTarget({m_plan, option.id});
    EXPECT_EQ(view().picture().openings.size(), 2U);
    EXPECT_TRUE(view().picture().apart.openings.empty());
    EXPECT_EQ(view().picture().differences.added, 1);
    EXPECT_EQ(view().picture().differences.removed, 1);
    m_panel->setTarget({m_plan, {}});
    menu->menu()->actions().at(0)->trigger();
    EXPECT_TRUE(view().picture().differences.names.isEmpty());
    EXPECT_EQ(view().picture().openings.at(0).mark, RowMark::plain);
}

TEST_F(PlanDrawing, WhatAnOptionHasElsewhereIsShownBesideWhereItStood) {
    drawDen();
    key(Qt::Key_W);
    type(u"36 x 60"_s);
    click(room().outline[0].x.toInches() + 40, room().outline[0].y.toInches());
    key(Qt::Key_Escape);
    Variant option;
    option.id = m_kit.desk().ids().next<Variant>();
    option.plan = m_plan;
    option.name = "Window aside";
    Opening aside = opening();
    aside.replaces = aside.id;
    aside.id = m_kit.desk().ids().next<Opening>();
    aside.variant = option.id;
    aside.along = aside.along + feetOf(4);
    ASSERT_TRUE(m_kit.desk().perform(
        EditBuilder(m_kit.book(), "Add option").put(option).put(aside).take()));
    m_panel->setTarget({m_plan, option.id});
    const PlanPicture& picture = view().picture();
    ASSERT_EQ(picture.openings.size(), 1U);
    EXPECT_EQ(picture.openings[0].mark, RowMark::changed);
    ASSERT_EQ(picture.apart.openings.size(), 1U);
    EXPECT_EQ(picture.apart.openings[0].mark, RowMark::removed);
    EXPECT_NEAR(picture.openings[0].at.x() - picture.apart.openings[0].at.x(), 48, 0.1);
    EXPECT_TRUE(picture.apart.openings[0].before);
    EXPECT_EQ(picture.differences.changed, 1);
    EXPECT_EQ(picture.differences.moved, 1);
    EXPECT_EQ(picture.differences.removed, 0) << "it is moved, not taken away";
    if (const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); !folder.isEmpty())
        m_page->grab().save(folder + u"/plan-differences.png"_s);
}

} // namespace
} // namespace miterbook
