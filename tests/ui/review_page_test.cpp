// SPDX-License-Identifier: GPL-3.0-or-later
// Finished houses compared, and a learned rate taken into the book by one click.
#include "charts/bar_picture.h"
#include "charts/line_picture.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "job/house_stage.h"
#include "stages/review/compare_tab.h"
#include "stages/review/house_tab.h"
#include "stages/review/losses_tab.h"
#include "stages/review/rates_tab.h"
#include "stages/review/review_desk.h"
#include "stages/review/review_page.h"
#include "stages/review/review_stage.h"
#include "ui/ui_kit.h"

#include <QApplication>
#include <QChart>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class ReviewPageTest : public testing::Test {
protected:
    ReviewPageTest()
        : m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures) {
        for (int lot = 1; lot <= 4; ++lot)
            finishHouse("Lot " + std::to_string(lot), 130 + 5 * lot);
        m_page = qobject_cast<ReviewPage*>(m_stage.page());
        m_page->resize(1500, 900);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page));
    }
    ~ReviewPageTest() override { m_figures.stopSearch(); }

    /// A house won, and worked off in so many per cent of its bid hours.
    void finishHouse(const std::string& name, int percent) {
        const Id<House> id = m_kit.startHouse(name);
        House house = *m_kit.book().house(id);
        m_figures.setJob({house.work, id, {}});
        m_figures.stopSearch();
        m_estimate = m_figures.figures().estimate;
        house.stage = HouseStage::finished;
        EditBuilder edit(m_kit.book(), "Finish " + name);
        putHouseStage(edit, m_kit.book(), m_kit.desk().ids(), house,
            addDays(m_kit.desk().clock().today(), -5 * percent + 400), &m_estimate);
        for (const WorkBid& bid : workBids(m_estimate)) {
            std::int64_t left = bid.hours.minutes() * percent / 100;
            for (int day = 1; left > 0; ++day) {
                TimeEntry entry;
                entry.id = m_kit.desk().ids().next<TimeEntry>();
                entry.date = addDays(m_kit.desk().clock().today(), -day);
                entry.person = m_kit.book().prices.of<CrewMember>().begin()->first;
                entry.house = id;
                entry.work = bid.work;
                entry.time = Hours::minutes(std::min<std::int64_t>(left, 480));
                left -= entry.time.minutes();
                edit.put(entry);
            }
        }
        ASSERT_TRUE(m_kit.desk().perform(edit.take())) << m_kit.refused().toStdString();
    }
    void picture(int tab, const QString& name) {
        m_page->tabs().setCurrentIndex(tab);
        QTest::qWait(50);
        const QPixmap shot = m_page->grab();
        EXPECT_FALSE(shot.isNull());
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            shot.save(folder + u'/' + name + u".png"_s);
    }

    UiKit m_kit;
    FigureDesk m_figures;
    ReviewStage m_stage;
    Estimate m_estimate;
    ReviewPage* m_page = nullptr;
};

TEST_F(ReviewPageTest, ThisHouseCameToMoreThanItsBid) {
    const QString said = m_page->house().summary();
    EXPECT_TRUE(said.startsWith(u"Profit $"_s)) << said.toStdString();
    const auto& rows = m_page->house().view().model()->rows();
    ASSERT_GT(rows.size(), 2U);
    EXPECT_TRUE(rows.back().strong);
}

TEST_F(ReviewPageTest, PlansAreComparedInATableAndAPicture) {
    m_page->tabs().setCurrentIndex(1);
    for (const CompareBy by : {CompareBy::plan, CompareBy::builder, CompareBy::year}) {
        m_page->compare().compareBy(by);
        const auto& rows = m_page->compare().view().model()->rows();
        ASSERT_GE(rows.size(), 1U);
        int houses = 0;
        for (const FigureRow& row : rows)
            houses += row.cells[1].text.toInt();
        EXPECT_EQ(houses, 4);
        EXPECT_EQ(m_page->compare().picture().chart()->series().size(), 1);
        EXPECT_TRUE(m_page->compare().picture().accessibleDescription().contains(
            rows.front().cells.front().text));
    }
}

TEST_F(ReviewPageTest, NamesAreNotCutOff) {
    m_page->tabs().setCurrentIndex(1);
    m_page->resize(900, 700);
    Plan plan = *m_kit.book().plan(m_kit.plan());
    plan.name = "The Alder with the long porch and the loft, 2400";
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Rename", plan)));
    for (const CompareBy by : {CompareBy::builder, CompareBy::plan, CompareBy::year}) {
        m_page->compare().compareBy(by);
        const QTableView& table = *m_page->compare().view().table();
        for (const FigureRow& row : m_page->compare().view().model()->rows()) {
            EXPECT_GE(
                table.columnWidth(0), table.fontMetrics().horizontalAdvance(row.cells.front().text))
                << row.cells.front().text.toStdString();
        }
        EXPECT_EQ(table.columnViewportPosition(0), 0) << "it is in view";
    }
}

TEST_F(ReviewPageTest, ALearnedRateIsTakenByOneClickAndGivenBackByUndo) {
    m_page->tabs().setCurrentIndex(3);
    RatesTab& tab = m_page->rates();
    ASSERT_FALSE(tab.view().model()->rows().empty());
    tab.choose(Task::prehungDoor);
    const LabourRate before = *m_kit.book().prices.rate(Task::prehungDoor);
    const std::vector<WorkBid> won = m_kit.book().soldBid(
        m_kit.book().jobs.of<House>().begin()->second.work);
    const Hours bid = m_figures.figures().estimate.total.hours;
    tab.accept();
    const LabourRate& taken = *m_kit.book().prices.rate(Task::prehungDoor);
    EXPECT_EQ(taken.origin, Origin::learned);
    EXPECT_GT(taken.minutes, before.minutes);
    EXPECT_NE(taken.source.find("4 houses"), std::string::npos) << taken.source;
    EXPECT_GT(m_figures.figures().estimate.total.hours, bid) << "the next bid";
    EXPECT_EQ(m_kit.book().soldBid(m_kit.book().jobs.of<House>().begin()->second.work), won);
    EXPECT_EQ(m_kit.desk().undoStack().undoText().toStdString().substr(0, 6), "Accept");
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(*m_kit.book().prices.rate(Task::prehungDoor), before);
}

TEST_F(ReviewPageTest, ARateThatWasTakenLearnsNothingNewFromTheSameHouses) {
    RatesTab& tab = m_page->rates();
    m_page->tabs().setCurrentIndex(3);
    tab.choose(Task::prehungDoor);
    tab.accept();
    const MinutesPerUnit taken = m_kit.book().prices.rate(Task::prehungDoor)->minutes;
    for (const TaskRate& rate : m_page->review().rates()) {
        if (rate.held.task == Task::prehungDoor) {
            EXPECT_EQ(rate.learnedMinutes(), taken);
        }
    }
}

TEST_F(ReviewPageTest, EveryTabIsPainted) {
    picture(0, u"review-house"_s);
    picture(1, u"review-compare"_s);
    picture(2, u"review-losses"_s);
    picture(3, u"review-rates"_s);
}

} // namespace
} // namespace miterbook
