// SPDX-License-Identifier: GPL-3.0-or-later
// The plan of a started house: what its builder revises later, and where saw and bench stand.
#include "desk/figure_desk.h"
#include "job/saw_spot_edit.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/plan_page.h"
#include "stages/plan/plan_stage.h"
#include "stages/plan/plan_tables.h"
#include "stages/plan/revision_bar.h"
#include "stages/plan/revision_dialog.h"
#include "stages/plan/saw_overlay.h"
#include "stages/plan/variant_prices.h"
#include "stages/plan/variants_panel.h"
#include "ui/ui_kit.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class PlanOfAHouse : public testing::Test {
protected:
    PlanOfAHouse()
        : m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures)
        , m_house(m_kit.startHouse("Lot 14"))
        , m_work(m_kit.book().house(m_house)->work) {
        show({m_work, m_house, {}});
        m_page = qobject_cast<PlanPage*>(m_stage.page());
        m_page->resize(1500, 1000);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page));
        m_panel = m_page->findChild<PlanPanel*>();
        m_saw = m_page->findChild<SawOverlay*>();
    }
    ~PlanOfAHouse() override { m_figures.stopSearch(); }

    void show(const JobRef& job) {
        m_figures.setJob(job);
        m_figures.stopSearch();
        m_stage.showJob(m_figures.job());
    }
    RevisionBar& bar() const { return m_page->revisions(); }
    PlanView& view() const { return m_panel->view(); }
    Opening window(Id<Plan> plan, const std::string& mark) const {
        for (const auto& [id, opening] : m_kit.book().sheet(plan).of<Opening>()) {
            if (opening.mark == mark && !opening.variant)
                return opening;
        }
        ADD_FAILURE() << mark;
        return {};
    }
    /// The builder revises his plan while nobody looks at the house.
    void revise(const std::string& mark, Length width) {
        Opening opening = window(m_kit.plan(), mark);
        opening.width = width;
        ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Revise " + mark, opening)));
        m_figures.stopSearch();
    }
    std::string firstWindow() const {
        for (const auto& [id, opening] : m_kit.book().sheet(m_work).of<Opening>()) {
            if (opening.isWindow())
                return opening.mark;
        }
        return {};
    }
    void picture(QWidget* widget, const QString& name) {
        QApplication::processEvents();
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
        if (!folder.isEmpty())
            widget->grab().save(folder + u'/' + name + u".png"_s);
    }
    QPoint at(double x, double y) const { return view().frame().toScreen(QPointF(x, y)).toPoint(); }

    UiKit m_kit;
    FigureDesk m_figures;
    PlanStage m_stage;
    Id<House> m_house;
    Id<Plan> m_work;
    PlanPage* m_page = nullptr;
    PlanPanel* m_panel = nullptr;
    SawOverlay* m_saw = nullptr;
};

TEST_F(PlanOfAHouse, IsToldOfARevisionAndTakesItByKeys) {
    EXPECT_TRUE(bar().isHidden()) << "the plan is as it was";
    const std::string mark = firstWindow();
    revise(mark, Length::inches(71));
    ASSERT_TRUE(bar().isVisible());
    EXPECT_EQ(bar().revisions().size(), 1U);
    EXPECT_TRUE(m_stage.nextStep().contains(u"revised"_s)) << m_stage.nextStep().toStdString();
    picture(m_page, u"plan-revised"_s);
    QTimer::singleShot(0, m_page, [this] {
        auto* dialog = qobject_cast<RevisionDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        EXPECT_TRUE(dialog->list().item(0)->text().contains(u"71\" in the plan"_s))
            << dialog->list().item(0)->text().toStdString();
        picture(dialog, u"plan-revision-dialog"_s);
        for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
            if (button->text().startsWith(u"&Take"_s))
                QTest::keyClick(button, Qt::Key_Space);
        }
        if (dialog->isVisible())
            dialog->reject();
    });
    bar().ask();
    EXPECT_EQ(window(m_work, mark).width, Length::inches(71));
    EXPECT_TRUE(bar().isHidden());
    m_kit.desk().undoStack().undo();
    EXPECT_NE(window(m_work, mark).width, Length::inches(71));
    EXPECT_TRUE(bar().isVisible()) << "taken back, it is offered again";
}

TEST_F(PlanOfAHouse, KeepsItsOwnWhereItWantsTo) {
    const std::string mark = firstWindow();
    const Length before = window(m_work, mark).width;
    revise(mark, Length::inches(71));
    bar().settle({}, bar().revisions());
    EXPECT_EQ(window(m_work, mark).width, before);
    EXPECT_TRUE(bar().isHidden());
    revise(mark, Length::inches(72));
    EXPECT_TRUE(bar().isVisible());
    show(m_kit.job());
    EXPECT_TRUE(bar().isHidden()) << "a builder's plan has nobody to follow";
}

TEST_F(PlanOfAHouse, OffersOnlyWhatIsTicked) {
    const auto revision = [](const char* what) {
        PlanRevision made;
        made.kind = PlanRevision::Kind::added;
        made.what = what;
        return made;
    };
    RevisionDialog dialog({revision("opening \"W7\""), revision("room \"<b>Den</b>\"")});
    EXPECT_EQ(dialog.list().item(1)->text(), u"room \"<b>Den</b>\" is new in the plan"_s);
    EXPECT_EQ(dialog.chosen().size(), 2U);
    dialog.list().setFocus();
    dialog.list().setCurrentRow(0);
    QTest::keyClick(&dialog.list(), Qt::Key_Space);
    ASSERT_EQ(dialog.chosen().size(), 1U);
    EXPECT_EQ(dialog.chosen().front().what, "room \"<b>Den</b>\"");
    dialog.list().item(1)->setCheckState(Qt::Unchecked);
    for (const QPushButton* button : dialog.findChildren<QPushButton*>())
        EXPECT_EQ(button->isEnabled(), button->text() == u"Later"_s)
            << button->text().toStdString();
}

TEST_F(PlanOfAHouse, SaysWhereTheSawStandsByPointerAndKeys) {
    view().setTool(PlanTool::rectangle);
    QTest::mouseClick(&view(), Qt::LeftButton, {}, at(0, 0));
    ASSERT_TRUE(view().take(u"20' x 16'"_s));
    view().setTool(PlanTool::window);
    ASSERT_TRUE(view().take(u"3050"_s));
    const QPointF corner = view().picture().rooms.front().outline.front();
    QTest::mouseClick(&view(), Qt::LeftButton, {}, at(corner.x() + 120, corner.y()));
    ASSERT_EQ(view().picture().openings.size(), 1U) << m_kit.refused().toStdString();
    m_figures.stopSearch();
    EXPECT_TRUE(m_saw->marks().empty());
    EXPECT_FALSE(m_saw->awayAction()->isEnabled());

    QTest::keyClick(&view(), Qt::Key_M);
    EXPECT_EQ(view().tool(), PlanTool::saw);
    QTest::mouseClick(&view(), Qt::LeftButton, {}, at(corner.x() + 120, corner.y() + 96));
    const SawSpot* spot = sawSpotOn(m_kit.book(), m_work, m_panel->level());
    ASSERT_NE(spot, nullptr) << m_kit.refused().toStdString();
    ASSERT_EQ(m_saw->marks().size(), 1U);
    EXPECT_TRUE(m_saw->marks()[0].chosen);
    EXPECT_EQ(m_saw->marks()[0].words, u"Saw: 16 ft to walk"_s) << "8 ft there and 8 back";
    m_saw->bestAction()->setChecked(true);
    ASSERT_EQ(m_saw->marks().size(), 2U);
    EXPECT_EQ(m_saw->marks()[0].words, u"Best for the saw: 6 ft to walk"_s)
        << "3 ft from the wall there and back: " << m_saw->marks()[0].words.toStdString();
    picture(m_page, u"plan-saw"_s);

    const Length before = spot->x;
    QTest::keyClick(&view(), Qt::Key_Right); // the cross hair, by a foot
    QTest::keyClick(&view(), Qt::Key_Return);
    spot = sawSpotOn(m_kit.book(), m_work, m_panel->level());
    EXPECT_EQ(spot->x, before + Length::feet(1));
    EXPECT_EQ(m_kit.book().sheet(m_work).of<SawSpot>().size(), 1U) << "it was moved";
    m_saw->awayAction()->trigger();
    EXPECT_EQ(m_saw->marks().size(), 1U);
    EXPECT_EQ(sawSpotOn(m_kit.book(), m_work, m_panel->level()), nullptr);
}

TEST_F(PlanOfAHouse, ElevationsAndOptionsSayWhatTheyAdd) {
    show(m_kit.job());
    auto* panel = m_page->findChild<VariantsPanel*>();
    auto* tabs = m_page->findChild<PlanTables*>();
    auto* prices = m_page->findChild<VariantPrices*>();
    EXPECT_TRUE(prices->said().isEmpty()) << "nobody looks yet";
    tabs->setCurrentWidget(panel);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !prices->said().isEmpty(); }, 60'000));
    const Book& book = m_kit.book();
    const PriceBook& rack = book.prices;
    const PlanPrices sums = planPrices(book, m_kit.plan(),
        [&](const StickNeed& need) { return planSticks(need, rack, Effort::quick); });
    ASSERT_EQ(sums.options.size(), 1U);
    const QString option = optionText(sums, sums.options.front(), u"$"_s);
    EXPECT_TRUE(prices->said().contains(option)) << prices->said().toStdString();
    EXPECT_TRUE(option.contains(u"+$"_s) || option.contains(u"\u2212$"_s));
    picture(m_page, u"plan-variant-prices"_s);
}

TEST(OptionText, SaysAnotherPriceOnlyWhereItIsAnother) {
    PlanPrices prices;
    prices.columns = {{{}, "As drawn", Money::dollars(100)},
        {Id<Variant>(1), "A", Money::dollars(90)}, {Id<Variant>(2), "B", Money::dollars(120)}};
    const PlanPrices::Option option{
        Id<Variant>(3), "Den", {Money::dollars(40), Money::dollars(40), Money::dollars(-5)}};
    EXPECT_EQ(optionText(prices, option, u"$"_s), u"Den: +$40.00; with elevation B \u2212$5.00"_s);
}

TEST_F(PlanOfAHouse, ABuildersPlanHasNoSaw) {
    show(m_kit.job());
    view().setTool(PlanTool::saw);
    QTest::mouseClick(&view(), Qt::LeftButton, {}, at(30, 30));
    EXPECT_TRUE(m_kit.refused().contains(u"start one from this plan"_s))
        << m_kit.refused().toStdString();
    EXPECT_TRUE(m_saw->marks().empty());
}

} // namespace
} // namespace miterbook
