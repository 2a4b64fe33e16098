// SPDX-License-Identifier: GPL-3.0-or-later
// The drawn sample plan on the page, and how names of rooms fit where they are drawn small.
#include "desk/figure_desk.h"
#include "io/file_bytes.h"
#include "io/plan_text.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/drawing/plan_view.h"
#include "stages/plan/drawing/room_name.h"
#include "stages/plan/plan_stage.h"
#include "ui/ui_kit.h"

#include <QApplication>
#include <QFontMetricsF>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

QFont boldFont() {
    QFont font = QApplication::font();
    font.setBold(true);
    return font;
}

class RoomNames : public testing::Test {
protected:
    std::vector<FittedName> all(const QString& name, double wide, double lines) const {
        return fittedNames(name, u"204"_s, {wide, lines * m_bold.height()}, m_bold, m_small);
    }
    /// The first that fits; without words where nothing does.
    FittedName fit(const QString& name, double wide, double lines) const {
        const auto names = all(name, wide, lines);
        return names.empty() ? FittedName{} : names.front();
    }
    double wide(const QString& text) const { return m_bold.width(text); }

    LabelFont m_bold{boldFont(), nullptr};
    LabelFont m_small{QApplication::font(), nullptr};
};

TEST_F(RoomNames, StandInOneLineWhereTheyCan) {
    EXPECT_EQ(fit(u"Primary closet"_s, wide(u"Primary closet"_s), 1),
        (FittedName{u"Primary closet"_s, false}));
}

TEST_F(RoomNames, ArePartedAtASpaceBeforeTheyAreMadeSmall) {
    const double narrow = wide(u"Primary"_s);
    EXPECT_EQ(fit(u"Primary closet"_s, narrow, 2), (FittedName{u"Primary\ncloset"_s, false}));
    EXPECT_EQ(fit(u"Primary closet"_s, narrow, 2).lines(), 2);
    EXPECT_EQ(fit(u"A closet for coats"_s, wide(u"for coats"_s), 2),
        (FittedName{u"A closet\nfor coats"_s, false}));
}

TEST_F(RoomNames, AreSmallThenTheNumberThenCutOff) {
    const double smallWide = m_small.width(u"Primary closet"_s);
    ASSERT_LT(smallWide, wide(u"Primary closet"_s));
    EXPECT_EQ(fit(u"Primary closet"_s, smallWide, 1), (FittedName{u"Primary closet"_s, true}));
    const double number = m_small.width(u"204"_s);
    EXPECT_EQ(fit(u"Primary closet"_s, number, 1), (FittedName{u"204"_s, true}));
    const auto names = all(u"Primary closet"_s, smallWide * 0.7, 1);
    ASSERT_EQ(names.size(), 2U);
    const QString cut = names.back().text;
    EXPECT_TRUE(cut.startsWith(u"Prim"_s)) << cut.toStdString();
    EXPECT_LE(m_small.width(cut), smallWide * 0.7);
}

TEST_F(RoomNames, AreLeftOutWhereNothingFits) {
    EXPECT_TRUE(all(u"Primary closet"_s, 4, 1).empty());
    EXPECT_TRUE(all(u"Primary closet"_s, 400, 0.5).empty());
}

TEST(SamplePlan, IsDrawnWhole) {
    UiKit kit;
    FigureDesk figures(kit.desk());
    PlanStage stage(kit.desk(), figures);
    const auto text = readFileBytes(
        std::string(MITERBOOK_SOURCE_DIR) + "/sample-jobs/larkspur/larkspur.miterplan");
    ASSERT_TRUE(text.ok());
    const auto edit = readPlanText(kit.book(), kit.desk().ids(), *text);
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    ASSERT_TRUE(kit.desk().perform(*edit));
    const Id<Plan> plan = std::prev(kit.book().jobs.of<Plan>().end())->first;
    ASSERT_TRUE(kit.desk().openPlan(plan));
    figures.setJob({plan, {}, {}});
    figures.stopSearch();
    stage.showJob(figures.job());
    QWidget* page = stage.page();
    page->resize(1400, 800);
    page->show();
    auto* panel = page->findChild<PlanPanel*>();
    auto* view = panel->findChild<PlanView*>();
    for (const auto& [name, rooms] : {std::pair("Main", 10U), std::pair("Upper", 13U)}) {
        EXPECT_EQ(findRow(kit.book(), panel->level())->name, name);
        EXPECT_EQ(view->picture().rooms.size(), rooms) << name;
        EXPECT_EQ(view->picture().undrawnRooms, 0) << name;
        EXPECT_EQ(view->picture().unplacedOpenings, 0) << name;
        QApplication::processEvents();
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
        if (!folder.isEmpty())
            page->grab().save(folder + u"/plan-sample-"_s + QString::fromUtf8(name) + u".png"_s);
        panel->stepLevel(1);
    }
}

} // namespace
} // namespace miterbook
