// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/bid_stage.h"
#include "stages/order/order_stage.h"
#include "stages/plan/plan_stage.h"
#include "stages/takeoff/takeoff_stage.h"
#include "ui/ui_kit.h"
#include "widgets/message_strip.h"
#include "windows/main_window.h"
#include "windows/nav_bar.h"
#include "windows/status_line.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

template <class Kind>
std::unique_ptr<Stage> make(Desk& desk, FigureDesk& figures) {
    return std::make_unique<Kind>(desk, figures);
}

class WindowTest : public testing::Test {
protected:
    WindowTest()
        : m_window(m_kit.desk(), m_services,
            {make<PlanStage>, make<TakeoffStage>, make<BidStage>, make<OrderStage>}) {
        m_window.resize(1500, 900);
        m_window.show();
    }
    ~WindowTest() override { m_window.figures().stopSearch(); }

    NavBar* bar(const QString& name) const {
        for (NavBar* each : m_window.findChildren<NavBar*>()) {
            if (each->accessibleName() == name)
                return each;
        }
        return nullptr;
    }
    /// Saves a picture for the eye when a folder is named; one test at least must paint.
    void picture(const QString& name) {
        QApplication::processEvents();
        const QPixmap shot = m_window.grab();
        EXPECT_FALSE(shot.isNull());
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            shot.save(folder + u'/' + name + u".png"_s);
    }

    UiKit m_kit;
    NoServices m_services;
    MainWindow m_window;
};

TEST_F(WindowTest, BeginsWithTheHousesAndNoJob) {
    EXPECT_EQ(m_window.place(), MainWindow::houses);
    m_window.showPlace(MainWindow::job);
    EXPECT_EQ(m_window.place(), MainWindow::houses) << "there is no job to show";
    EXPECT_TRUE(m_window.windowTitle().startsWith(u"Ridge Trim"_s));
    picture(u"houses-empty"_s);
}

TEST_F(WindowTest, ShowsAPlanOnItsStages) {
    ASSERT_TRUE(m_window.showJob(m_kit.job()));
    EXPECT_EQ(m_window.place(), MainWindow::job);
    NavBar* stages = bar(u"Stages"_s);
    ASSERT_EQ(stages->count(), 4);
    EXPECT_EQ(stages->current(), 0);
    const QString line = m_window.findChild<StatusLine*>()->text();
    for (const QString& word : {u"Price $"_s, u"Cost $"_s, u"Hours "_s, u"Margin "_s})
        EXPECT_TRUE(line.contains(word)) << line.toStdString();
    const char* const names[] = {"plan", "takeoff", "bid", "order"};
    for (int stage = 0; stage < 4; ++stage) {
        QTest::keyClick(&m_window, Qt::Key(Qt::Key_1 + stage), Qt::ControlModifier);
        EXPECT_EQ(stages->current(), stage);
        picture(QString::fromLatin1(names[stage]));
    }
}

TEST_F(WindowTest, EscapeGoesBackToTheHouses) {
    m_window.showJob(m_kit.job());
    QTest::keyClick(&m_window, Qt::Key_Escape);
    EXPECT_EQ(m_window.place(), MainWindow::houses);
    m_window.show();
    m_window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&m_window));
    QTest::keyClick(&m_window, Qt::Key_5, Qt::AltModifier);
    EXPECT_EQ(m_window.place(), MainWindow::job);
    QTest::keyClick(&m_window, Qt::Key_Home, Qt::AltModifier);
    EXPECT_EQ(m_window.place(), MainWindow::houses);
}

TEST_F(WindowTest, IsNamedByTheBookThatIsOpenWhenItIsShown) {
    MainWindow next(m_kit.desk(), m_services, {});
    m_services.path = u"/books/Second shop.miterbook"_s;
    next.show();
    EXPECT_TRUE(next.windowTitle().startsWith(u"Second shop"_s))
        << next.windowTitle().toStdString();
}

TEST_F(WindowTest, SaysWhatWasRefusedUntilSomethingSucceeds) {
    auto* strip = m_window.findChild<MessageStrip*>();
    m_kit.desk().refuse(badInput("The width is no length."));
    EXPECT_EQ(strip->sentence(), u"The width is no length."_s);
    EXPECT_FALSE(strip->isHidden());
    ASSERT_TRUE(m_kit.startHouse("Lot 3"));
    EXPECT_TRUE(strip->isHidden());
}

TEST_F(WindowTest, LeavesAHouseThatIsUndone) {
    const Id<House> house = m_kit.startHouse("Lot 9");
    ASSERT_TRUE(m_window.showJob({m_kit.book().house(house)->work, house, {}}));
    picture(u"house"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_window.place(), MainWindow::houses);
    EXPECT_FALSE(m_window.figures().job());
}

TEST_F(WindowTest, UndoNamesWhatItTakesBack) {
    ASSERT_TRUE(m_kit.startHouse("Lot 9"));
    bool named = false;
    for (const QAction* action : m_window.findChildren<QAction*>())
        named = named || action->text() == u"Undo: Start house Lot 9"_s;
    EXPECT_TRUE(named);
}

TEST_F(WindowTest, PapersArePreviewed) {
    m_window.showJob(m_kit.job());
    for (QMenu* menu : m_window.menuBar()->findChildren<QMenu*>()) {
        if (menu->title() != u"&Papers"_s)
            continue;
        Q_EMIT menu->aboutToShow();
        ASSERT_FALSE(menu->actions().isEmpty());
        menu->actions().first()->trigger();
    }
    EXPECT_EQ(m_services.previewed, u"bid"_s);
}

TEST_F(WindowTest, EveryPlaceIsPainted) {
    for (int lot = 1; lot <= 3; ++lot)
        ASSERT_TRUE(m_kit.startHouse("Lot " + std::to_string(lot)));
    QTest::qWait(200);
    picture(u"houses"_s);
    m_window.showPlace(MainWindow::plans);
    picture(u"plans"_s);
    m_window.showPlace(MainWindow::book);
    picture(u"book"_s);
}

} // namespace
} // namespace miterbook
