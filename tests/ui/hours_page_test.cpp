// SPDX-License-Identifier: GPL-3.0-or-later
// A week typed with the keyboard, a timer that is a row of the book, hours against the bid.
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "job/house_forecast.h"
#include "job/house_stage.h"
#include "stages/hours/entries_tab.h"
#include "stages/hours/hours_dialog.h"
#include "stages/hours/hours_page.h"
#include "stages/hours/hours_stage.h"
#include "stages/hours/pay_tab.h"
#include "stages/hours/progress_rows.h"
#include "stages/hours/progress_tab.h"
#include "stages/hours/timer_bar.h"
#include "stages/hours/week_columns.h"
#include "stages/hours/week_tab.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "widgets/table_proxy.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class HoursPageTest : public testing::Test {
protected:
    HoursPageTest()
        : m_house(m_kit.startHouse("Lot 14"))
        , m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures) {
        m_figures.setJob({m_kit.book().house(m_house)->work, m_house, {}});
        m_figures.stopSearch();
        m_page = qobject_cast<HoursPage*>(m_stage.page());
        m_page->resize(1500, 900);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page));
    }
    ~HoursPageTest() override { m_figures.stopSearch(); }

    DataTable& grid() const { return m_page->grid().table(); }
    const Table<TimeEntry>& entries() const { return m_kit.book().time.read(); }
    Id<CrewMember> first() const { return m_kit.book().prices.of<CrewMember>().begin()->first; }
    void typeLine(const QString& what, const QString& monday) {
        const int row = grid().proxy().rowCount() - 1;
        goTo(grid(), row, u"What"_s);
        typeCell(grid(), what, Qt::Key_Tab);
        goTo(grid(), row, u"Mon"_s);
        typeCell(grid(), monday, Qt::Key_Tab);
    }
    const WorkProgress& workOf(PieceOfWork work) const {
        const auto& works = m_page->progress().progress().works;
        return *std::ranges::find(works, work, &WorkProgress::work);
    }
    int rowOf(PieceOfWork work) const {
        const DataTable& table = m_page->progress().table();
        for (int row = 0; row < table.proxy().rowCount(); ++row) {
            if (cellText(table, row, u"Piece of work"_s) == text(word(work)))
                return row;
        }
        ADD_FAILURE() << word(work);
        return 0;
    }
    QString doneOf(PieceOfWork work) const {
        return cellText(m_page->progress().table(), rowOf(work), u"Done"_s);
    }
    void typeDone(PieceOfWork work, const QString& typed) {
        DataTable& table = m_page->progress().table();
        goTo(table, rowOf(work), u"Done"_s);
        typeCell(table, typed, Qt::Key_Return);
        goTo(table, rowOf(work), u"Done"_s);
    }
    void picture(int tab, const QString& name) {
        m_page->tabs().setCurrentIndex(tab);
        QApplication::processEvents();
        const QPixmap shot = m_page->grab();
        EXPECT_FALSE(shot.isNull());
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            shot.save(folder + u'/' + name + u".png"_s);
    }

    UiKit m_kit;
    Id<House> m_house;
    FigureDesk m_figures;
    HoursStage m_stage;
    HoursPage* m_page = nullptr;
};

TEST_F(HoursPageTest, ALineIsTypedFromItsFirstCell) {
    typeLine(u"doors"_s, u"7.5 / 6"_s);
    ASSERT_EQ(entries().size(), 1U) << m_kit.refused().toStdString();
    const TimeEntry& entry = entries().begin()->second;
    EXPECT_EQ(entry.work, PieceOfWork::doors);
    EXPECT_EQ(entry.time, Hours::minutes(450));
    EXPECT_EQ(entry.done, Quantity::count(6));
    EXPECT_EQ(entry.house, m_house) << "the house on the screen";
    EXPECT_EQ(entry.person, first());
    EXPECT_EQ(isoDate(entry.date), "2026-11-23");
    EXPECT_EQ(cellText(grid(), 0, u"Mon"_s), u"7.5 / 6"_s);
    EXPECT_EQ(cellText(grid(), 0, u"Hours"_s), u"7.5"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_TRUE(entries().empty());
}

TEST_F(HoursPageTest, ALineWithoutHoursWaitsOnTheScreen) {
    goTo(grid(), 0, u"What"_s);
    typeCell(grid(), u"crown"_s, Qt::Key_Tab);
    EXPECT_TRUE(entries().empty());
    EXPECT_EQ(cellText(grid(), 0, u"What"_s), u"crown"_s);
    goTo(grid(), 0, u"Tue"_s);
    typeCell(grid(), u"3:15"_s, Qt::Key_Tab);
    ASSERT_EQ(entries().size(), 1U) << m_kit.refused().toStdString();
    EXPECT_EQ(entries().begin()->second.time, Hours::minutes(195));
}

TEST_F(HoursPageTest, AnotherNameMovesItsEntries) {
    typeLine(u"doors"_s, u"4"_s);
    goTo(grid(), 0, u"What"_s);
    typeCell(grid(), u"travel"_s, Qt::Key_Tab);
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_EQ(entries().begin()->second.kind, TimeKind::travel);
    EXPECT_EQ(cellText(grid(), 0, u"Mon"_s), u"4.0"_s);
}

TEST_F(HoursPageTest, WhatCannotBeIsRefusedWithASentence) {
    typeLine(u"doors"_s, u"30"_s);
    EXPECT_TRUE(entries().empty());
    EXPECT_TRUE(m_kit.refused().contains(u"do not fit into one day"_s))
        << m_kit.refused().toStdString();
}

TEST_F(HoursPageTest, AnEmptiedDayTakesItsEntryAway) {
    typeLine(u"base"_s, u"5"_s);
    goTo(grid(), 0, u"Mon"_s);
    QTest::keyClick(&grid(), Qt::Key_Delete);
    EXPECT_TRUE(entries().empty());
}

TEST_F(HoursPageTest, LastWeeksLinesAreRepeated) {
    m_page->week().showWeekOf(addDays(m_page->week().first(), -7));
    typeLine(u"windows"_s, u"8"_s);
    m_page->week().showWeekOf(m_page->week().today());
    EXPECT_EQ(grid().proxy().rowCount(), 1) << "only the row for a new one";
    ASSERT_TRUE(m_page->week().repeatLastWeek());
    EXPECT_EQ(cellText(grid(), 0, u"What"_s), u"windows"_s);
    EXPECT_EQ(entries().size(), 1U);
}

TEST_F(HoursPageTest, RepeatingSaysWhatIsTrue) {
    EXPECT_FALSE(m_page->week().repeatLastWeek());
    EXPECT_TRUE(m_kit.refused().contains(u"nothing to repeat"_s)) << m_kit.refused().toStdString();
    m_page->week().showWeekOf(addDays(m_page->week().first(), -7));
    typeLine(u"windows"_s, u"8"_s);
    m_page->week().showWeekOf(m_page->week().today());
    ASSERT_TRUE(m_page->week().repeatLastWeek());
    EXPECT_FALSE(m_page->week().repeatLastWeek()) << "it waits to be filled in";
    EXPECT_TRUE(m_kit.refused().contains(u"is here already"_s)) << m_kit.refused().toStdString();
}

TEST_F(HoursPageTest, DaysHaveRoomForHoursAndUnits) {
    const int wide = grid().fontMetrics().horizontalAdvance(u"7.75 / 120"_s);
    for (const QString& day : {u"Mon"_s, u"Thu"_s, u"Sun"_s}) {
        EXPECT_GE(grid().columnWidth(columnOf(grid(), day)), wide) << day.toStdString();
    }
    typeLine(u"windows"_s, u"8"_s);
    EXPECT_GE(grid().columnWidth(columnOf(grid(), u"Tue"_s)), wide);
}

TEST_F(HoursPageTest, TheDayOfAnEntryIsTypedAsPeopleDo) {
    typeLine(u"windows"_s, u"8"_s);
    m_page->tabs().setCurrentIndex(2);
    DataTable& table = *m_page->tabs().currentWidget()->findChild<DataTable*>();
    for (const auto& [typed, iso] : {std::pair{u"11/24"_s, "2026-11-24"},
             std::pair{u"24 Nov 2026"_s, "2026-11-24"}, std::pair{u"11/23/26"_s, "2026-11-23"}}) {
        goTo(table, 0, u"Date"_s);
        typeCell(table, typed, Qt::Key_Tab);
        ASSERT_EQ(entries().size(), 1U);
        EXPECT_EQ(isoDate(entries().begin()->second.date), iso)
            << typed.toStdString() << ' ' << m_kit.refused().toStdString();
    }
}

TEST_F(HoursPageTest, AnApprovedWeekStaysAsItIs) {
    m_page->week().showWeekOf(addDays(m_page->week().first(), -7));
    typeLine(u"windows"_s, u"8"_s);
    ASSERT_TRUE(m_page->week().approve()) << m_kit.refused().toStdString();
    goTo(grid(), 0, u"Tue"_s);
    typeCell(grid(), u"8"_s, Qt::Key_Tab);
    EXPECT_EQ(entries().size(), 1U);
    EXPECT_TRUE(m_kit.refused().contains(u"has been approved"_s)) << m_kit.refused().toStdString();
    EXPECT_TRUE(m_page->grid().remarks().contains(u"approved"_s));
    ASSERT_TRUE(m_page->week().takeBackApproval());
    EXPECT_FALSE(m_page->week().isApproved());
}

TEST_F(HoursPageTest, TheWeekNowIsNotOverYet) {
    typeLine(u"windows"_s, u"8"_s);
    EXPECT_FALSE(m_page->week().approve());
    EXPECT_TRUE(m_kit.refused().contains(u"is not over yet"_s));
}

TEST_F(HoursPageTest, ATimerIsARowUntilItIsWrittenDown) {
    TimerBar& bar = m_page->timer();
    bar.chooseWhat(u"stairs"_s);
    bar.startOrPause();
    ASSERT_EQ(m_kit.book().jobs.of<Timer>().size(), 1U) << m_kit.refused().toStdString();
    const Timer& timer = m_kit.book().jobs.of<Timer>().begin()->second;
    EXPECT_TRUE(timer.running());
    EXPECT_EQ(timer.house, m_house);
    EXPECT_EQ(timer.work, PieceOfWork::stairs);
    EXPECT_TRUE(bar.state().contains(u"running"_s));
    HoursStage again(m_kit.desk(), m_figures); // as after a crash: the row is all there is
    EXPECT_TRUE(qobject_cast<HoursPage*>(again.page())->timer().state().contains(u"running"_s));
    bar.writeDown();
    EXPECT_TRUE(m_kit.book().jobs.of<Timer>().empty());
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_EQ(entries().begin()->second.time, Hours::minutes(1)) << "the clock of the test stands";
}

TEST_F(HoursPageTest, HoursAreHeldAgainstTheBid) {
    typeLine(u"doors"_s, u"8 / 2"_s);
    const HouseProgress& progress = m_page->progress().progress();
    const auto doors = std::ranges::find(progress.works, PieceOfWork::doors, &WorkProgress::work);
    ASSERT_NE(doors, progress.works.end());
    EXPECT_EQ(doors->used, Hours::whole(8));
    EXPECT_EQ(doors->by, DoneBy::units);
    EXPECT_GT(doors->forecast, doors->bid);
    EXPECT_TRUE(m_page->progress().summary().contains(u"more than bid"_s))
        << m_page->progress().summary().toStdString();
}

TEST_F(HoursPageTest, WhatIsDoneIsTypedWhereNothingCountsIt) {
    typeLine(u"stairs"_s, u"6"_s);
    m_page->tabs().setCurrentIndex(1);
    EXPECT_EQ(doneOf(PieceOfWork::stairs), u"not known"_s);
    const Hours before = workOf(PieceOfWork::stairs).forecast;
    typeDone(PieceOfWork::stairs, u"25"_s);
    EXPECT_EQ(m_kit.refused(), QString());
    EXPECT_EQ(doneOf(PieceOfWork::stairs), u"25"_s);
    EXPECT_EQ(workOf(PieceOfWork::stairs).by, DoneBy::said);
    EXPECT_EQ(workOf(PieceOfWork::stairs).forecast, Hours::whole(24)) << "6 h are a quarter [calc]";
    ASSERT_EQ(m_kit.book().jobs.of<WorkDone>().size(), 1U);
    EXPECT_EQ(m_kit.keeper().kept().jobs.of<WorkDone>().size(), 1U) << "it is in the file";
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(doneOf(PieceOfWork::stairs), u"not known"_s);
    EXPECT_EQ(workOf(PieceOfWork::stairs).forecast, before);
    m_kit.desk().undoStack().redo();
    EXPECT_EQ(doneOf(PieceOfWork::stairs), u"25"_s);
}

TEST_F(HoursPageTest, WhatWasSaidIsTakenBackByNothing) {
    m_page->tabs().setCurrentIndex(1);
    typeDone(PieceOfWork::stairs, u"40 %"_s);
    ASSERT_EQ(m_kit.book().jobs.of<WorkDone>().size(), 1U) << m_kit.refused().toStdString();
    typeDone(PieceOfWork::stairs, u"55.5"_s);
    ASSERT_EQ(m_kit.book().jobs.of<WorkDone>().size(), 1U);
    EXPECT_EQ(m_kit.book().jobs.of<WorkDone>().begin()->second.done, Percent::basisPoints(5550));
    const DataTable& table = m_page->progress().table();
    QTest::keyClick(&m_page->progress().table(), Qt::Key_Delete);
    EXPECT_TRUE(m_kit.book().jobs.of<WorkDone>().empty()) << table.currentIndex().row();
    EXPECT_EQ(doneOf(PieceOfWork::stairs), u"not known"_s);
}

TEST_F(HoursPageTest, AShareBeyondAllIsRefused) {
    m_page->tabs().setCurrentIndex(1);
    for (const auto& typed : {u"101"_s, u"-5"_s, u"nearly"_s}) {
        typeDone(PieceOfWork::stairs, typed);
        EXPECT_FALSE(m_kit.refused().isEmpty()) << typed.toStdString();
        EXPECT_TRUE(m_kit.book().jobs.of<WorkDone>().empty()) << typed.toStdString();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    }
}

TEST_F(HoursPageTest, WhatIsCountedIsNotTypedOver) {
    typeLine(u"doors"_s, u"8 / 2"_s);
    m_page->tabs().setCurrentIndex(1);
    typeDone(PieceOfWork::doors, u"90"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"are written down as finished"_s))
        << m_kit.refused().toStdString();
    EXPECT_TRUE(m_kit.book().jobs.of<WorkDone>().empty());
}

TEST_F(HoursPageTest, TheWholeHouseFollowsFromItsPieces) {
    m_page->tabs().setCurrentIndex(1);
    DataTable& table = m_page->progress().table();
    const int last = table.proxy().rowCount() - 1;
    EXPECT_EQ(cellText(table, last, u"Piece of work"_s), u"all"_s);
    goTo(table, last, u"Done"_s);
    typeCell(table, u"50"_s, Qt::Key_Tab);
    EXPECT_TRUE(m_kit.refused().contains(u"follows from its pieces of work"_s))
        << m_kit.refused().toStdString();
}

TEST_F(HoursPageTest, ProgressIsTheOneForecast) {
    typeLine(u"doors"_s, u"8 / 2"_s);
    m_page->tabs().setCurrentIndex(1);
    typeDone(PieceOfWork::stairs, u"30"_s);
    const JobFigures& figures = m_figures.figures();
    EXPECT_EQ(m_page->progress().progress(),
        houseForecast(m_kit.book(), *m_kit.book().house(m_house), houseBid(m_kit.book(), figures),
            hungShares(m_kit.book(), figures)));
}

TEST_F(HoursPageTest, OfAFinishedHouseItIsSaidWhatItTook) {
    typeLine(u"doors"_s, u"8 / 2"_s);
    House house = *m_kit.book().house(m_house);
    house.stage = HouseStage::finished;
    EditBuilder done(m_kit.book(), "Finish");
    putHouseStage(done, m_kit.book(), m_kit.desk().ids(), house, m_kit.desk().clock().today(),
        &m_figures.figures().estimate);
    ASSERT_TRUE(m_kit.desk().perform(done.take()));
    EXPECT_TRUE(m_page->progress().summary().contains(u"It took "_s))
        << m_page->progress().summary().toStdString();
    EXPECT_FALSE(m_page->progress().summary().contains(u"As it goes"_s));
    m_page->tabs().setCurrentIndex(1);
    typeDone(PieceOfWork::stairs, u"25"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"is finished"_s)) << m_kit.refused().toStdString();
    EXPECT_FALSE(m_page->nextStep().contains(u"more hours than bid"_s));
}

TEST_F(HoursPageTest, TheRowsOfProgressAddUp) {
    typeLine(u"doors"_s, u"8 / 2"_s);
    const HouseProgress& progress = m_page->progress().progress();
    const auto rows = progressRows(m_house, progress, m_page->progress().crewRate());
    ASSERT_EQ(rows.size(), progress.works.size() + 1);
    Hours used;
    for (const ProgressRow& row : rows)
        used += row.all ? Hours() : row.work.used;
    EXPECT_TRUE(rows.back().all);
    EXPECT_EQ(rows.back().work.used, used) << "nothing waited";
    EXPECT_EQ(rows.back().over(), progress.forecast - progress.bid);
}

TEST_F(HoursPageTest, TheBidThatWasWonStandsWhenRatesChange) {
    House house = *m_kit.book().house(m_house);
    house.stage = HouseStage::won;
    EditBuilder won(m_kit.book(), "Win");
    putHouseStage(won, m_kit.book(), m_kit.desk().ids(), house, m_kit.desk().clock().today(),
        &m_figures.figures().estimate);
    ASSERT_TRUE(m_kit.desk().perform(won.take()));
    const Hours bid = m_page->progress().progress().bid;
    LabourRate rate = *m_kit.book().prices.rate(Task::prehungDoor);
    rate.minutes = MinutesPerUnit::whole(200);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Slower", rate)));
    EXPECT_EQ(m_page->progress().progress().bid, bid);
    EXPECT_GT(m_figures.figures().estimate.total.hours, bid);
}

TEST_F(HoursPageTest, AFileIsBroughtInWholeAndOnce) {
    QTemporaryDir folder;
    const QString path = folder.filePath(u"week.csv"_s);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Date,Who,House,What,Hours,Units done\n"
               "11/23/2026,Del,Lot 14,doors,6,4\n"
               "11/24/2026,Ina,Lot 14,travel,0.5,\n"
               "11/24/2026,Nobody,Lot 14,doors,6,\n");
    file.close();
    HoursDialog dialog(m_kit.desk());
    ASSERT_TRUE(dialog.readFile(path)) << dialog.message().toStdString();
    EXPECT_EQ(dialog.reading()->rows.size(), 2U);
    ASSERT_EQ(dialog.reading()->rejected.size(), 1U);
    EXPECT_EQ(dialog.reading()->rejected.front().line, 4);
    dialog.bringIn();
    EXPECT_EQ(entries().size(), 2U);
    HoursDialog twice(m_kit.desk());
    ASSERT_TRUE(twice.readFile(path));
    EXPECT_TRUE(twice.reading()->rows.empty());
    EXPECT_EQ(twice.reading()->known.size(), 2U);
}

TEST_F(HoursPageTest, PayFollowsTheWeek) {
    for (const char* day : {"Mon", "Tue", "Wed"}) {
        const int row = day == std::string("Mon") ? grid().proxy().rowCount() - 1 : 0;
        goTo(grid(), row, QString::fromLatin1(day));
        typeCell(grid(), u"14"_s, Qt::Key_Tab);
    }
    const PaySheet& sheet = m_page->pay().sheet();
    ASSERT_EQ(sheet.lines.size(), 1U);
    EXPECT_EQ(sheet.lines.front().time, Hours::whole(42));
    EXPECT_EQ(sheet.lines.front().overtime, Hours::whole(2));
    EXPECT_GT(sheet.lines.front().extra, Money());
}

TEST_F(HoursPageTest, EveryTabIsPainted) {
    typeLine(u"doors"_s, u"8 / 5"_s);
    typeLine(u"windows"_s, u"6.25 / 9"_s);
    typeLine(u"base"_s, u"3 / 140"_s);
    typeLine(u"travel"_s, u"0.5"_s);
    m_page->timer().startOrPause();
    picture(0, u"hours-week"_s);
    picture(1, u"hours-progress"_s);
    picture(2, u"hours-entries"_s);
    picture(3, u"hours-pay"_s);
}

TEST(DayCells, AreReadAsTheyAreWritten) {
    EXPECT_EQ(readDay(u"7.5 / 6"_s)->done, Quantity::count(6));
    EXPECT_EQ(readDay(u""_s)->time, Hours());
    EXPECT_EQ(readDay(u"7:40"_s)->time, Hours::minutes(460));
    EXPECT_EQ(dayText({Hours::minutes(460), {}, 1}), u"7.67"_s);
    EXPECT_FALSE(readDay(u"7 / 6 / 5"_s).ok());
    EXPECT_FALSE(readDay(u"much"_s).ok());
}

} // namespace
} // namespace miterbook
