// SPDX-License-Identifier: GPL-3.0-or-later
// The Houses page and the Hours page of a house say the same of it.
#include "cut/progress.h"
#include "desk/figure_desk.h"
#include "job/house_stage.h"
#include "job/say_done.h"
#include "stages/hours/hours_page.h"
#include "stages/hours/hours_stage.h"
#include "stages/hours/progress_tab.h"
#include "ui/ui_kit.h"
#include "windows/house_figures.h"

#include <QTest>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class OneForecast : public testing::Test {
protected:
    OneForecast()
        : m_house(m_kit.startHouse("Lot 14"))
        , m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures)
        , m_list(m_kit.desk()) {
        m_figures.setJob({house().work, m_house, {}});
        m_figures.stopSearch();
    }
    ~OneForecast() override { m_figures.stopSearch(); }

    const House& house() const { return *m_kit.book().house(m_house); }
    const HouseProgress& onPage() {
        auto* page = qobject_cast<HoursPage*>(m_stage.page());
        page->show();
        page->tabs().setCurrentIndex(1);
        return page->progress().progress();
    }
    Money rateOnPage() { return qobject_cast<HoursPage*>(m_stage.page())->progress().crewRate(); }
    void toStage(HouseStage stage) {
        House moved = house();
        moved.stage = stage;
        EditBuilder edit(m_kit.book(), "Stage");
        putHouseStage(
            edit, m_kit.book(), m_kit.desk().ids(), moved, today(), &m_figures.figures().estimate);
        ASSERT_TRUE(m_kit.desk().perform(edit.take()));
    }
    void spend(PieceOfWork work, int minutes, int done = 0) {
        TimeEntry entry;
        entry.id = m_kit.desk().ids().next<TimeEntry>();
        entry.date = today();
        entry.person = m_kit.book().prices.of<CrewMember>().begin()->first;
        entry.house = m_house;
        entry.work = work;
        entry.time = Hours::minutes(minutes);
        entry.done = Quantity::count(done);
        ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Hours", entry)));
    }
    void hangOneWindow() {
        const CutFigures cut = cutFiguresFor(m_kit.book(), m_figures.figures());
        const auto unit = std::ranges::find_if(
            cut.units, [](const OpeningUnit& each) { return each.opening.isWindow(); });
        ASSERT_NE(unit, cut.units.end());
        EditBuilder edit(m_kit.book(), "Hang a window");
        for (CutPiece& piece : ticked(cut.sheet,
                 piecesOf(cut.sheet, unit->opening.id.value(), unit->unit), PieceState::hung,
                 house().work, m_kit.book().sheet(house().work).of<CutPiece>(), m_kit.desk().ids()))
            edit.put(std::move(piece));
        ASSERT_TRUE(m_kit.desk().perform(edit.take())) << m_kit.refused().toStdString();
    }
    Date today() { return m_kit.desk().clock().today(); }
    /// The list once it has read what it wants of the house.
    HouseFigure inList() {
        m_list.want({house().work});
        const HouseProgress& page = onPage();
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                const auto figure = m_list.find(house());
                return figure && figure->done == page.done;
            },
            60'000));
        return m_list.find(house()).value_or(HouseFigure());
    }
    void expectSame() {
        const HouseFigure figure = inList();
        const HouseProgress& page = onPage();
        EXPECT_EQ(figure.hours, page.bid);
        EXPECT_EQ(figure.done, page.done);
        EXPECT_EQ(figure.over, page.forecast - page.bid);
        EXPECT_EQ(figure.toProfit, -page.profitLost(rateOnPage()));
    }

    UiKit m_kit;
    Id<House> m_house;
    FigureDesk m_figures;
    HoursStage m_stage;
    HouseFigures m_list;
};

TEST_F(OneForecast, WhileItIsBidOn) {
    spend(PieceOfWork::doors, 600, 2);
    expectSame();
}

TEST_F(OneForecast, ByUnitsAndByWhatWasSaid) {
    toStage(HouseStage::underway);
    spend(PieceOfWork::doors, 600, 2);
    spend(PieceOfWork::stairs, 300);
    EditBuilder edit(m_kit.book(), "Say");
    putWorkDone(
        edit, m_kit.book(), m_kit.desk().ids(), m_house, PieceOfWork::stairs, Percent::whole(20));
    ASSERT_TRUE(m_kit.desk().perform(edit.take()));
    expectSame();
    EXPECT_GT(onPage().done, Percent());
}

TEST_F(OneForecast, ByWhatIsHung) {
    toStage(HouseStage::underway);
    spend(PieceOfWork::windows, 600);
    hangOneWindow();
    expectSame();
    const auto& works = onPage().works;
    EXPECT_EQ(
        std::ranges::find(works, PieceOfWork::windows, &WorkProgress::work)->by, DoneBy::ticks);
}

TEST_F(OneForecast, OnceItIsFinished) {
    spend(PieceOfWork::doors, 600, 2);
    toStage(HouseStage::finished);
    expectSame();
    EXPECT_EQ(onPage().done, Percent::hundred());
    EXPECT_EQ(onPage().forecast, Hours::whole(10));
}

TEST_F(OneForecast, AtTheRateOfTheBidThatWasWon) {
    toStage(HouseStage::underway);
    for (int day = 0; day < 9; ++day)
        spend(PieceOfWork::doors, 600);
    CrewMember first = m_kit.book().prices.of<CrewMember>().begin()->second;
    first.wage = first.wage + Money::dollars(40);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Raise", first)));
    ASSERT_NE(m_figures.figures().estimate.crewRate, rateOnPage());
    expectSame();
}

} // namespace
} // namespace miterbook
