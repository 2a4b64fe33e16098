// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/progress.h"
#include "desk/figure_desk.h"
#include "job/cut_figures.h"
#include "stages/plan/live_panel.h"
#include "stages/plan/plan_stage.h"
#include "stages/plan/plan_tables.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"

#include <QComboBox>
#include <QListWidget>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class PlanPageTest : public testing::Test {
protected:
    PlanPageTest()
        : m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures)
        , m_page(m_stage.page()) {
        m_figures.setJob(m_kit.job());
        m_stage.showJob(m_kit.job());
        m_page->resize(1400, 800);
        m_page->show();
        m_tables = m_page->findChild<PlanTables*>();
    }

    UiKit m_kit;
    FigureDesk m_figures;
    PlanStage m_stage;
    QWidget* m_page;
    PlanTables* m_tables = nullptr;
};

TEST_F(PlanPageTest, AChangedWidthChangesTheFiguresAtOnceAndUndoPutsThemBack) {
    m_figures.stopSearch();
    const JobFigures before = m_figures.figures();
    DataTable& table = *m_tables->currentTable();
    goTo(table, 0, u"Width"_s);
    typeCell(table, u"96"_s);
    const JobFigures after = m_figures.figures();
    EXPECT_NE(after.takeoff.pieces, before.takeoff.pieces);
    EXPECT_GT(after.estimate.total.hours, before.estimate.total.hours);
    EXPECT_NE(after.estimate.total.price, before.estimate.total.price);
    EXPECT_NE(after.buy, before.buy);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_figures.figures().takeoff, before.takeoff);
    EXPECT_EQ(m_figures.figures().estimate.total.hours, before.estimate.total.hours);
    m_figures.stopSearch();
}

TEST_F(PlanPageTest, AProblemIsShownAndLeadsToItsRow) {
    DataTable& table = *m_tables->currentTable();
    goTo(table, 3, u"Width"_s);
    const std::int64_t key = table.cells().keyOfRow(3);
    table.clearCells();
    auto* panel = m_page->findChild<LivePanel*>();
    EXPECT_GT(panel->problems(), 0);
    EXPECT_TRUE(m_stage.nextStep().startsWith(u"put right"_s)) << m_stage.nextStep().toStdString();
    auto* list = panel->findChild<QListWidget*>();
    ASSERT_GT(list->count(), 0);
    EXPECT_TRUE(list->item(0)->text().startsWith(u"Problem: "_s));
    m_tables->setCurrentIndex(0);
    Q_EMIT list->itemActivated(list->item(0));
    EXPECT_EQ(m_tables->currentTable(), &table);
    EXPECT_EQ(table.cells().keyOfRow(table.currentRow()), key);
}

TEST_F(PlanPageTest, ChangesForAnElevationAreLookedAtWithIt) {
    QComboBox* target = nullptr;
    for (QComboBox* box : m_page->findChildren<QComboBox*>()) {
        if (box->accessibleName() == u"Changes go into"_s)
            target = box;
    }
    ASSERT_NE(target, nullptr);
    target->setCurrentIndex(target->findData(qlonglong(m_kit.elevation().value())));
    Q_EMIT target->activated(target->currentIndex());
    EXPECT_EQ(m_tables->target().variant, m_kit.elevation());
    EXPECT_EQ(m_figures.job().selection.elevation, m_kit.elevation());
    m_figures.stopSearch();
}

/// A house of the plan on the page, with the first opening of its windows.
class HousePlanTest : public PlanPageTest {
protected:
    HousePlanTest() {
        const Id<House> house = m_kit.startHouse("Lot 14");
        m_work = m_kit.book().house(house)->work;
        m_figures.setJob({m_work, house, {}});
        m_figures.stopSearch();
        m_stage.showJob(m_figures.job());
    }
    ~HousePlanTest() override { m_figures.stopSearch(); }

    QString head(int row) const {
        return m_tables->currentTable()->model()->headerData(row, Qt::Vertical).toString();
    }
    void mark(std::int64_t opening, PieceState state) {
        const SawSheet sheet = cutFiguresFor(m_kit.book(), m_figures.figures()).sheet;
        EditBuilder edit(m_kit.book(), "Mark");
        const auto& kept = m_kit.book().sheet(m_work).of<CutPiece>();
        std::vector<std::size_t> pieces;
        for (std::size_t i = 0; i < sheet.pieces.size(); ++i) {
            if (sheet.pieces[i].piece.key.source == opening)
                pieces.push_back(i);
        }
        for (CutPiece& row : ticked(sheet, pieces, state, m_work, kept, m_kit.desk().ids()))
            edit.put(std::move(row));
        ASSERT_TRUE(m_kit.desk().perform(edit.take()));
        m_figures.stopSearch();
    }

    Id<Plan> m_work;
};

TEST_F(HousePlanTest, WindowsAndDoorsSayHowFarTheyAre) {
    const std::int64_t first = m_tables->currentTable()->cells().keyOfRow(0);
    EXPECT_EQ(head(0), u"1"_s) << "nothing has been cut: nothing is said";
    mark(first, PieceState::cut);
    EXPECT_TRUE(head(0).endsWith(u"cut"_s)) << head(0).toStdString();
    EXPECT_FALSE(head(0).endsWith(u"to cut"_s));
    EXPECT_TRUE(head(1).endsWith(u"to cut"_s)) << head(1).toStdString();
    mark(first, PieceState::hung);
    EXPECT_TRUE(head(0).endsWith(u"hung"_s)) << head(0).toStdString();
    EXPECT_NE(head(0)[3], head(1)[3]) << "the sign differs too";
    m_kit.desk().undoStack().undo();
    EXPECT_TRUE(head(0).endsWith(u"cut"_s));
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
    if (!folder.isEmpty())
        m_page->grab().save(folder + u"/plan-states.png"_s);
}

TEST_F(HousePlanTest, ARemovedOpeningTakesItsMeasuresAlong) {
    DataTable& table = *m_tables->currentTable();
    const Id<Opening> first(table.cells().keyOfRow(0));
    Measure measure;
    measure.id = m_kit.desk().ids().next<Measure>();
    measure.plan = m_work;
    measure.opening = first;
    measure.widthTop = Length::inches(36);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Measure", measure)));
    mark(first.value(), PieceState::cut);
    const Table<CutPiece> cut = m_kit.book().sheet(m_work).of<CutPiece>();
    ASSERT_FALSE(cut.empty());
    goTo(table, 0, u"Width"_s);
    table.removeRows();
    EXPECT_EQ(findRow(m_kit.book(), first), nullptr);
    EXPECT_EQ(findRow(m_kit.book(), measure.id), nullptr);
    EXPECT_EQ(m_kit.book().sheet(m_work).of<CutPiece>(), cut) << "what was cut stays on record";
    m_kit.desk().undoStack().undo();
    ASSERT_NE(findRow(m_kit.book(), measure.id), nullptr);
    EXPECT_EQ(*findRow(m_kit.book(), measure.id), measure);
}

TEST_F(PlanPageTest, AnEmptyPlanSaysWhatToDoFirst) {
    PlanRows none;
    Plan plan;
    plan.id = m_kit.desk().ids().next<Plan>();
    plan.name = "Bare";
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Begin plan Bare", plan)));
    m_figures.setJob({plan.id, {}, {}});
    m_stage.showJob(m_figures.job());
    EXPECT_EQ(m_stage.nextStep(), u"type the levels"_s);
    EXPECT_EQ(m_tables->currentTable()->cells().realRows(), 0);
    EXPECT_FALSE(m_tables->currentTable()->cells().emptyHint().isEmpty());
}

} // namespace
} // namespace miterbook
