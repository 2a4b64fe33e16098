// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "stages/order/order_page.h"
#include "stages/order/order_rows.h"
#include "stages/order/what_if_panel.h"
#include "ui/ui_kit.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class OrderPageTest : public testing::Test {
protected:
    OrderPageTest()
        : m_figures(m_kit.desk())
        , m_page(m_kit.desk(), m_figures) {
        m_page.resize(1200, 800);
        m_page.show();
        m_figures.setJob(m_kit.job());
    }
    ~OrderPageTest() override { m_figures.stopSearch(); }

    bool settle() {
        return QTest::qWaitFor([this] { return m_figures.settled(); }, 60'000);
    }
    template <class Kind>
    Kind* named(const QString& name) const {
        for (Kind* each : m_page.findChildren<Kind*>()) {
            if (each->accessibleName() == name)
                return each;
        }
        ADD_FAILURE() << name.toStdString();
        return nullptr;
    }
    QString summary() const {
        for (const QLabel* each : m_page.findChildren<QLabel*>()) {
            if (each->accessibleDescription() == u"What the order costs"_s)
                return each->text();
        }
        return {};
    }
    QPushButton* button(const QString& text) const {
        for (auto* each : m_page.findChildren<QPushButton*>()) {
            if (each->text() == text)
                return each;
        }
        return nullptr;
    }
    WhatIfPanel& whatIf() {
        auto* tabs = m_page.findChild<QTabWidget*>();
        tabs->setCurrentIndex(2);
        return *m_page.findChild<WhatIfPanel*>();
    }
    bool answered() {
        return QTest::qWaitFor([this] { return !whatIf().busy(); }, 60'000);
    }
    FigureModel* model() { return whatIf().findChild<FigureView*>()->model(); }
    double number(int row, int column) {
        return *model()
                    ->rows()[static_cast<std::size_t>(row)]
                    .cells[static_cast<std::size_t>(column)]
                    .number;
    }
    /// The row of a title in its first column.
    int rowOf(const QString& title) {
        for (int row = 0; row < model()->rowCount(); ++row) {
            if (model()->index(row, 0).data().toString() == title)
                return row;
        }
        return -1;
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
    OrderPage m_page;
};

TEST_F(OrderPageTest, SaysHowGoodThePlanIsAndWhetherItLooksOn) {
    EXPECT_TRUE(summary().contains(u"looking for a cheaper way"_s)) << summary().toStdString();
    EXPECT_TRUE(summary().contains(u"$"_s));
    picture(u"order-looking"_s);
    ASSERT_TRUE(settle());
    EXPECT_FALSE(summary().contains(u"looking"_s));
    EXPECT_TRUE(summary().contains(u"cannot be bought cheaper"_s)
        || summary().contains(u"of the best possible"_s))
        << summary().toStdString();
    picture(u"order-settled"_s);
}

TEST_F(OrderPageTest, TheSearchIsStoppedAndTakenUpByItsButton) {
    QPushButton* stop = button(u"&Stop looking"_s);
    ASSERT_TRUE(stop);
    stop->click();
    EXPECT_TRUE(m_figures.settled());
    EXPECT_EQ(stop->text(), u"&Look for a cheaper way"_s);
    stop->click();
    EXPECT_FALSE(m_figures.settled());
    ASSERT_TRUE(settle());
    EXPECT_TRUE(stop->isHidden());
}

TEST(OrderRows, BoundInPlainWords) {
    PriceBook prices;
    Shop shop;
    shop.currency = "$";
    prices.of<Shop>().put(shop);
    StickPlan plan;
    plan.cost = Money::cents(1000);
    plan.bound = Money::cents(690);
    EXPECT_EQ(boundText({plan}, prices), u"within $3.10 of the best possible"_s);
    plan.bound = plan.cost;
    plan.proven = true;
    EXPECT_EQ(boundText({plan}, prices), u"which cannot be bought cheaper"_s);
}

TEST(OrderRows, SticksAreNamedByTheFoot) {
    Shop shop;
    EXPECT_EQ(stickText(Length::feet(16), shop), u"16 ft"_s);
    EXPECT_EQ(stickText(Length::inches(90), shop), u"7' 6\""_s);
    shop.unit = LengthUnit::millimetres;
    EXPECT_EQ(stickText(Length::feet(16), shop), u"4876.8 mm"_s);
}

TEST_F(OrderPageTest, WhatIfComparesSideBySide) {
    ASSERT_TRUE(settle());
    EXPECT_TRUE(whatIf().sentence().startsWith(u"Alter anything"_s));
    const int all = rowOf(u"all sticks"_s);
    ASSERT_GE(all, 0);
    EXPECT_EQ(number(all, 3), 0);
    const double now = number(all, 1);
    named<QCheckBox>(u"The yard has 16 ft today"_s)->click();
    ASSERT_TRUE(answered());
    EXPECT_EQ(number(all, 1), now);
    EXPECT_EQ(number(all, 3), number(all, 2) - now);
    EXPECT_TRUE(whatIf().sentence().startsWith(u"The sticks would come to"_s)
        || whatIf().sentence().startsWith(u"It cannot all be cut"_s))
        << whatIf().sentence().toStdString();
    // Fewer lengths to choose from only cost less where the pieces are others.
    EXPECT_EQ(number(all, 3) < 0, whatIf().sentence().endsWith(u"spliced elsewhere then."_s));
    picture(u"order-what-if"_s);
    button(u"As it is &again"_s)->click();
    EXPECT_EQ(number(all, 3), 0);
    EXPECT_TRUE(named<QCheckBox>(u"The yard has 16 ft today"_s)->isChecked());
}

TEST_F(OrderPageTest, ALowerPriceOfOneLengthNeverCostsMore) {
    ASSERT_TRUE(settle());
    whatIf();
    named<QComboBox>(u"Stick at another price"_s)->setCurrentIndex(0);
    QTest::keyClicks(named<QLineEdit>(u"Price of that stick"_s), u"0.50"_s);
    ASSERT_TRUE(answered());
    EXPECT_LT(number(rowOf(u"all sticks"_s), 3), 0);
    EXPECT_TRUE(whatIf().sentence().endsWith(u"less."_s)) << whatIf().sentence().toStdString();
}

TEST_F(OrderPageTest, AWiderKerfAndWhatCannotBeRead) {
    ASSERT_TRUE(settle());
    whatIf();
    QLineEdit* kerf = named<QLineEdit>(u"Kerf"_s);
    QTest::keyClicks(kerf, u"1/4"_s);
    ASSERT_TRUE(answered());
    EXPECT_GE(number(rowOf(u"all sticks"_s), 3), 0);
    kerf->clear();
    QTest::keyClicks(kerf, u"wide"_s);
    EXPECT_TRUE(whatIf().sentence().startsWith(u"Kerf: "_s)) << whatIf().sentence().toStdString();
    EXPECT_FALSE(whatIf().busy());
}

TEST_F(OrderPageTest, TenFeetLessIsPlannedOrRefused) {
    ASSERT_TRUE(settle());
    whatIf();
    QTest::keyClicks(named<QLineEdit>(u"Feet less"_s), u"10"_s);
    ASSERT_TRUE(answered());
    if (whatIf().sentence().startsWith(u"The sticks would"_s)) {
        constexpr double tenFeet = 3.048e9;
        EXPECT_LE(number(rowOf(u"LF bought"_s), 3), -tenFeet);
    } else {
        EXPECT_TRUE(whatIf().sentence().startsWith(u"No plan was found"_s))
            << whatIf().sentence().toStdString();
    }
    picture(u"order-ten-feet-less"_s);
}

TEST_F(OrderPageTest, EveryControlHasANameAndTakesTheKeyboard) {
    whatIf();
    for (const QWidget* each : m_page.findChildren<QWidget*>()) {
        if (qobject_cast<const QLineEdit*>(each) || qobject_cast<const QComboBox*>(each)) {
            EXPECT_FALSE(each->accessibleName().isEmpty()) << each->metaObject()->className();
        }
        if (const auto* box = qobject_cast<const QCheckBox*>(each)) {
            EXPECT_TRUE(box->focusPolicy() & Qt::TabFocus);
        }
    }
}

} // namespace
} // namespace miterbook
