// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/price_list_dialog.h"
#include "windows/price_list_file.h"

#include "book/stick_prices.h"
#include "figures/figure_view.h"
#include "ui/ui_kit.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class PriceListDialogTest : public testing::Test {
protected:
    PriceListDialogTest()
        : m_dialog(m_kit.desk()) {
        m_stick = m_kit.book().prices.of<Stick>().begin()->second;
        m_name = QString::fromStdString(
            std::string(m_kit.book().prices.profileName(m_stick.profile)));
        m_dialog.show();
    }
    bool read(const QString& csv) {
        const QString path = m_folder.filePath(u"list.csv"_s);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(csv.toUtf8());
        file.close();
        return m_dialog.readFile(path);
    }
    QLineEdit* field(const QString& start) {
        for (auto* each : m_dialog.findChildren<QLineEdit*>()) {
            if (each->accessibleName().startsWith(start))
                return each;
        }
        ADD_FAILURE() << start.toStdString();
        return nullptr;
    }
    static int rows(const FigureView& view) { return view.table()->model()->rowCount(); }
    QPushButton* bring() {
        for (auto* each : m_dialog.findChildren<QPushButton*>()) {
            if (each->text().startsWith(u"Bring in"_s) && !each->text().contains(u"nothing"_s))
                return each;
        }
        return nullptr;
    }

    UiKit m_kit;
    PriceListDialog m_dialog;
    QTemporaryDir m_folder;
    Stick m_stick;
    QString m_name;
};

TEST_F(PriceListDialogTest, ShowsWhatChangesThenBringsItIn) {
    ASSERT_TRUE(read(u"Profile,Length,Price\n\"%1\",%2,77.70\n"_s.arg(m_name).arg(
        m_stick.length.nm() / Length::feet(1).nm())));
    EXPECT_EQ(rows(m_dialog.changes()), 1);
    EXPECT_EQ(m_dialog.changes().table()->model()->index(0, 3).data().toString(), u"77.70"_s);
    EXPECT_TRUE(bring()->isEnabled());
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
    if (!folder.isEmpty())
        m_dialog.grab().save(folder + u"/price-list.png"_s);
    QTest::keyClick(bring(), Qt::Key_Space);
    EXPECT_FALSE(m_dialog.isVisible());
    EXPECT_EQ(m_kit.book().prices.priceOf(m_stick), Money::cents(7770));
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_kit.book().prices.priceOf(m_stick), m_stick.price);
}

TEST_F(PriceListDialogTest, TheBooksOwnPricesComeBackAsTheyWere) {
    const std::string csv = priceListCsv(m_kit.book().prices);
    ASSERT_TRUE(read(QString::fromStdString(csv)));
    EXPECT_EQ(rows(m_dialog.changes()), 0) << m_dialog.message().toStdString();
    EXPECT_EQ(rows(m_dialog.rejected()), 0) << m_dialog.message().toStdString();
    const auto sticks = m_kit.book().prices.of<Stick>().size();
    EXPECT_GT(sticks, 100U);
    EXPECT_TRUE(m_dialog.message().contains(u"%1 are so already"_s.arg(sticks)))
        << m_dialog.message().toStdString();
}

TEST_F(PriceListDialogTest, WithAFaultNothingCanBeBroughtIn) {
    ASSERT_TRUE(
        read(u"Profile,Length,Price\n\"%1\",16,77.70\nNobody's moulding,16,3\n"_s.arg(m_name)));
    EXPECT_EQ(rows(m_dialog.rejected()), 1);
    EXPECT_FALSE(bring()->isEnabled());
    EXPECT_TRUE(m_dialog.message().contains(u"whole or not at all"_s))
        << m_dialog.message().toStdString();
    m_dialog.bringIn(); // even so
    EXPECT_TRUE(m_kit.book().prices.of<StickPrice>().empty());
}

TEST_F(PriceListDialogTest, TheDayAndTheWayOfQuotingAreAskedFor) {
    ASSERT_TRUE(read(u"Profile,Price\n\"%1\",1.50\n"_s.arg(m_name)));
    EXPECT_EQ(rows(m_dialog.changes()), 0); // a price for a stick needs its length
    auto* per = m_dialog.findChild<QComboBox*>();
    per->setCurrentText(u"foot"_s);
    Q_EMIT per->activated(per->currentIndex());
    EXPECT_GT(rows(m_dialog.changes()), 0);
    field(u"Prices hold"_s)->setText(u"2026-13-01"_s);
    Q_EMIT field(u"Prices hold"_s)->editingFinished();
    EXPECT_TRUE(m_dialog.message().contains(u"2026-13-01"_s)) << m_dialog.message().toStdString();
    EXPECT_FALSE(m_dialog.reading());
}

TEST_F(PriceListDialogTest, AFileThatIsNotThereIsSaid) {
    EXPECT_FALSE(m_dialog.readFile(u"/nowhere/list.csv"_s));
    EXPECT_TRUE(m_dialog.message().contains(u"list.csv"_s)) << m_dialog.message().toStdString();
}

} // namespace
} // namespace miterbook
