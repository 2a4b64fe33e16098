// SPDX-License-Identifier: GPL-3.0-or-later
// The tabs of the Bid page: piece price against cost, allowances, what if, the plan set, a purchase
// order; and the form's rules.
#include "stages/bid/bid_page.h"

#include "basics/number_text.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "stages/bid/both_ways_tab.h"
#include "stages/bid/price_sheet_tab.h"
#include "stages/bid/what_if_tab.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class BidTabsTest : public testing::Test {
protected:
    BidTabsTest()
        : m_figures(m_kit.desk())
        , m_page(m_kit.desk(), m_figures) {
        m_page.resize(1280, 820);
        m_page.show();
        show(m_kit.job());
    }
    ~BidTabsTest() override { m_figures.stopSearch(); }

    void show(const JobRef& job) {
        m_kit.desk().openPlan(job.plan);
        m_figures.setJob(job);
        m_page.showJob(job);
        // A stick plan that settled later would change the price in the midst of a test.
        ASSERT_TRUE(QTest::qWaitFor([this] { return m_figures.settled(); }, 60'000));
    }
    void toTab(const QString& title) {
        auto* tabs = m_page.findChild<QTabWidget*>();
        for (int i = 0; i < tabs->count(); ++i) {
            if (tabs->tabText(i) == title)
                tabs->setCurrentIndex(i);
        }
        QApplication::processEvents();
        EXPECT_EQ(tabs->tabText(tabs->currentIndex()), title);
    }
    QLineEdit* line(const QString& name) const {
        for (auto* each : m_page.findChildren<QLineEdit*>()) {
            if (each->accessibleName() == name)
                return each;
        }
        ADD_FAILURE() << name.toStdString();
        return nullptr;
    }
    void type(const QString& name, const QString& typed) {
        QLineEdit* field = line(name);
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, typed);
        QTest::keyClick(field, Qt::Key_Return);
    }
    void pricePiece(Task task, Money price) {
        PiecePrice piece;
        piece.id = m_kit.desk().ids().next<PiecePrice>();
        piece.task = task;
        piece.price = UnitPrice::cents(price.cents());
        ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Price", piece)));
    }
    /// The shop has no price of its own for any piece.
    void forgetPiecePrices() {
        EditBuilder edit(book(), "Forget piece prices");
        for (const auto& [id, price] : book().prices.of<PiecePrice>())
            edit.remove(id);
        ASSERT_TRUE(m_kit.desk().perform(edit.take()));
    }
    static QString cell(const FigureView& view, int row, int column) {
        return view.table()->model()->index(row, column).data().toString();
    }
    static int rowCalled(const FigureView& view, int column, const QString& words) {
        for (int row = 0; row < view.table()->model()->rowCount(); ++row) {
            if (cell(view, row, column) == words)
                return row;
        }
        return -1;
    }
    void picture(const QString& name) {
        QApplication::processEvents();
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            m_page.grab().save(folder + u"/bid-"_s + name + u".png"_s);
    }
    const Book& book() const { return m_kit.book(); }
    Money price() const { return m_figures.figures().estimate.total.price; }

    UiKit m_kit;
    FigureDesk m_figures;
    BidPage m_page;
};

TEST_F(BidTabsTest, ALineIsSwitchedByKeys) {
    forgetPiecePrices();
    toTab(u"Piece and cost"_s);
    BothWaysTab& tab = m_page.bothWays();
    EXPECT_TRUE(tab.words().contains(u"No task of this house has a piece price"_s));
    tab.switchLine();
    EXPECT_EQ(m_kit.refused(), u"Choose a line in the table first."_s);
    pricePiece(Task::base, Money::cents(10));
    EXPECT_TRUE(tab.words().startsWith(u"At your piece prices these lose"_s))
        << tab.words().toStdString();
    const int row = rowCalled(tab.lines(), 1, u"base, one piece"_s);
    ASSERT_GE(row, 0);
    EXPECT_EQ(cell(tab.lines(), row, 9), u"cost"_s);
    EXPECT_TRUE(cell(tab.lines(), row, 10).startsWith(u"loses"_s));
    const Money before = price();
    tab.lines().table()->setFocus();
    tab.lines().table()->selectRow(row);
    QPushButton* other = nullptr;
    for (QPushButton* each : tab.findChildren<QPushButton*>()) {
        if (each->text().contains(u"the other wa&y"_s))
            other = each;
    }
    ASSERT_TRUE(other);
    QTest::keyClick(other, Qt::Key_Space);
    EXPECT_EQ(m_kit.refused(), u"Choose a line in the table first."_s) << "nothing new was refused";
    EXPECT_EQ(
        cell(tab.lines(), rowCalled(tab.lines(), 1, u"base, one piece"_s), 9), u"the piece"_s);
    EXPECT_LT(price(), before);
    picture(u"both-ways"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(price(), before);
}

TEST_F(BidTabsTest, ALineWithoutAPiecePriceIsNotSwitched) {
    forgetPiecePrices();
    toTab(u"Piece and cost"_s);
    m_page.bothWays().lines().table()->selectRow(0);
    m_page.bothWays().switchLine();
    EXPECT_TRUE(m_kit.refused().startsWith(u"The book has no piece price for"_s));
    EXPECT_FALSE(book().bidSetup(m_kit.plan()));
}

TEST_F(BidTabsTest, TheFormsRulesMoveThePrice) {
    type(u"Rounded up to a multiple of"_s, u"100"_s);
    EXPECT_EQ(price().cents() % 10'000, 0);
    type(u"Minimum job"_s, u"90,000"_s);
    EXPECT_EQ(price(), Money::dollars(90'000));
    type(u"Minimum job"_s, u"-5"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"A minimum job of -5.00"_s))
        << m_kit.refused().toStdString();
    type(u"Prices in force on"_s, u"soon"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"soon"_s));
    type(u"Prices in force on"_s, u"2026-01-15"_s);
    EXPECT_EQ(isoDate(book().bidSetup(m_kit.plan())->date), "2026-01-15");
    for (auto* box : m_page.findChildren<QCheckBox*>()) {
        if (box->text() == u"Summary on one page"_s)
            QTest::keyClick(box, Qt::Key_Space);
    }
    EXPECT_TRUE(book().bidSetup(m_kit.plan())->onePage);
}

TEST_F(BidTabsTest, AllowancesAreTyped) {
    toTab(u"Allowances"_s);
    auto* table = m_page.findChild<QTabWidget*>()->currentWidget()->findChild<DataTable*>();
    ASSERT_TRUE(table);
    const Money before = price();
    goTo(*table, 0, u"Allowance for"_s);
    typeCell(*table, u"Door hardware"_s);
    goTo(*table, 0, u"Allowed"_s);
    typeCell(*table, u"900"_s);
    ASSERT_TRUE(book().bidSetup(m_kit.plan())) << m_kit.refused().toStdString();
    ASSERT_EQ(book().bidSetup(m_kit.plan())->allowances.size(), 1U);
    EXPECT_EQ(price(), before + Money::dollars(900));
    picture(u"allowances"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(price(), before);
}

TEST_F(BidTabsTest, AScenarioStandsBesideTheBid) {
    toTab(u"What if"_s);
    WhatIfTab& tab = m_page.whatIf();
    EXPECT_EQ(tab.outcomes().table()->model()->rowCount(), 1);
    goTo(tab.scenarios(), 0, u"Scenario"_s);
    typeCell(tab.scenarios(), u"Wages up a tenth"_s);
    goTo(tab.scenarios(), 0, u"Wages"_s);
    typeCell(tab.scenarios(), u"110"_s);
    ASSERT_EQ(book().jobs.of<Scenario>().size(), 1U) << m_kit.refused().toStdString();
    ASSERT_EQ(tab.outcomes().table()->model()->rowCount(), 2);
    EXPECT_EQ(cell(tab.outcomes(), 1, 0), u"Wages up a tenth"_s);
    EXPECT_TRUE(cell(tab.outcomes(), 1, 2).startsWith(u'+'));
    EXPECT_EQ(cell(tab.outcomes(), 0, 1).toStdString(), formatMoney(price()));
    EXPECT_EQ(cell(tab.outcomes(), 0, 6), cell(tab.outcomes(), 1, 6)); // the same hours
    picture(u"what-if"_s);
}

TEST_F(BidTabsTest, TheSetSaysWhatMovedAndWhy) {
    toTab(u"Plan set"_s);
    PriceSheetTab& tab = m_page.sheet();
    tab.reckon();
    EXPECT_GT(tab.prices().table()->model()->rowCount(), 2);
    EXPECT_TRUE(tab.words().contains(u"Reckon again after a change"_s))
        << tab.words().toStdString();
    LabourRate rate = book().prices.of<LabourRate>().begin()->second;
    rate.minutes = MinutesPerUnit::whole(99);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Revise", rate)));
    EXPECT_TRUE(tab.words().contains(u"Changed since this sheet: labour rate"_s));
    tab.reckon();
    EXPECT_TRUE(tab.words().contains(u"have moved since the sheet before"_s))
        << tab.words().toStdString();
    EXPECT_TRUE(tab.words().contains(u"Changed in between: labour rate"_s));
    picture(u"plan-set"_s);
}

TEST_F(BidTabsTest, APurchaseOrderIsHeldAgainstTheSheet) {
    const Id<House> house = m_kit.startHouse("Lot 9");
    show({book().house(house)->work, house, {}});
    toTab(u"Plan set"_s);
    PriceSheetTab& tab = m_page.sheet();
    type(u"Total of the purchase order"_s, u"x"_s);
    EXPECT_TRUE(tab.orderWords().contains(u"is not an amount"_s)) << tab.orderWords().toStdString();
    type(u"Total of the purchase order"_s, u"1,000"_s);
    EXPECT_TRUE(tab.orderWords().contains(u"By the sheet: Plan price"_s))
        << tab.orderWords().toStdString();
    EXPECT_TRUE(tab.orderWords().contains(u"short"_s));
    const QString words = tab.orderWords();
    const QString sheet = words.section(u"= $"_s, 1).section(u". "_s, 0, 0);
    type(u"Total of the purchase order"_s, sheet);
    EXPECT_TRUE(tab.orderWords().contains(u"The order agrees."_s))
        << tab.orderWords().toStdString();
    picture(u"purchase-order"_s);
}

} // namespace
} // namespace miterbook
