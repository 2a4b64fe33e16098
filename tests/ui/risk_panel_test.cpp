// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "job/house_stage.h"
#include "job/risk_history.h"
#include "stages/bid/bid_page.h"
#include "stages/bid/risk_curve.h"
#include "stages/bid/risk_panel.h"
#include "stages/bid/risk_rows.h"
#include "ui/ui_kit.h"

#include <QApplication>
#include <QLabel>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class RiskPanelTest : public testing::Test {
protected:
    RiskPanelTest()
        : m_figures(m_kit.desk())
        , m_page(m_kit.desk(), m_figures) {
        m_page.resize(1200, 800);
        m_page.show();
        m_figures.setJob(m_kit.job());
        m_page.findChild<QTabWidget*>()->setCurrentIndex(2);
    }
    ~RiskPanelTest() override { m_figures.stopSearch(); }

    RiskPanel& panel() const { return *m_page.findChild<RiskPanel*>(); }
    QString words() const {
        for (const QLabel* label : panel().findChildren<QLabel*>()) {
            if (label->accessibleDescription() == u"The chance of making money"_s)
                return label->text();
        }
        return {};
    }
    void picture(const QString& name) {
        QApplication::processEvents();
        const QPixmap shot = m_page.grab();
        EXPECT_FALSE(shot.isNull());
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            shot.save(folder + u'/' + name + u".png"_s);
    }

    UiKit m_kit;
    FigureDesk m_figures;
    BidPage m_page;
};

TEST_F(RiskPanelTest, WithoutHousesItSaysSoAndShowsTheStartersSpread) {
    EXPECT_TRUE(words().startsWith(u"No house is finished yet."_s)) << words().toStdString();
    EXPECT_TRUE(words().contains(u"20 % for each piece of work and 10 %"_s));
    EXPECT_TRUE(words().contains(u"Of 100 houses like this, "_s));
    EXPECT_TRUE(panel().findChild<RiskCurve*>()->isVisibleTo(&panel()));
    picture(u"bid-risk"_s);
}

TEST_F(RiskPanelTest, RowsAgreeWithTheOutlook) {
    const JobFigures& figures = m_figures.figures();
    const RiskOutlook outlook(figures.estimate, riskBelief({}));
    const std::vector<FigureRow> rows = certaintyRows(outlook, figures.estimate.total.profit);
    ASSERT_EQ(rows.size(), 8U);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        EXPECT_GT(*rows[i].cells[1].number, *rows[i - 1].cells[1].number);
        EXPECT_GT(*rows[i].cells[2].number, *rows[i - 1].cells[2].number);
        EXPECT_EQ(*rows[i].cells[3].number - *rows[i].cells[2].number,
            static_cast<double>(figures.estimate.total.profit.cents()));
    }
    EXPECT_EQ(workRiskRows(outlook).size(), outlook.works().size());
    EXPECT_EQ(panel().findChildren<FigureView*>().size(), 2);
}

TEST_F(RiskPanelTest, AFinishedHouseIsHistoryAndAPlanIsNot) {
    const Id<House> house = m_kit.startHouse("Lot 3");
    const House* row = m_kit.book().house(house);
    ASSERT_TRUE(row);
    const Edit finished = putEdit(m_kit.book(), "Revise the house", *row);
    EXPECT_FALSE(touchesHistory(finished.changes)); // nothing is changed
    House renamed = *row;
    renamed.lot = "3B";
    EXPECT_TRUE(touchesHistory(putEdit(m_kit.book(), "Revise", renamed).changes));
    Plan plan = *m_kit.book().plan(m_kit.plan());
    plan.note = "corner lot";
    EXPECT_FALSE(touchesHistory(putEdit(m_kit.book(), "Revise", plan).changes));
    EXPECT_TRUE(finishedWorks(m_kit.book()).empty());
}

TEST(RiskRows, NothingIsSaidOfABidWithoutHours) {
    const RiskOutlook outlook(Estimate(), riskBelief({}));
    EXPECT_EQ(riskSentences(outlook, "$"), u"There are no hours in this bid yet."_s);
    EXPECT_TRUE(certaintyRows(outlook, Money()).empty());
    EXPECT_TRUE(workRiskRows(outlook).empty());
}

} // namespace
} // namespace miterbook
