// SPDX-License-Identifier: GPL-3.0-or-later
// One forecast of a house, whoever asks: bid as won, what is hung, what was said.
#include "job/house_forecast.h"

#include "cut/progress.h"
#include "job/house_stage.h"
#include "job/say_done.h"
#include "job/start_house.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class HouseForecast : public testing::Test {
protected:
    void SetUp() override {
        LabourRate rate;
        rate.id = Id<LabourRate>(200);
        rate.task = Task::pictureFrameWindow;
        rate.minutes = MinutesPerUnit::whole(30);
        m_book.prices.of<LabourRate>().put(rate);
        CrewMember lena;
        lena.id = Id<CrewMember>(201);
        lena.name = "Lena";
        lena.wage = Money::dollars(30);
        m_book.prices.of<CrewMember>().put(lena);
        HouseStart start;
        start.plan = Id<Plan>(31);
        start.name = "Lot 12";
        apply(m_book, *startHouse(m_book, m_ids, start));
        m_house = std::prev(m_book.jobs.of<House>().end())->first;
    }
    const House& house() const { return *m_book.house(m_house); }
    JobFigures figures() const { return figuresFor(m_book, house().work, {}, Effort::quick); }
    void toStage(HouseStage stage) {
        House moved = house();
        moved.stage = stage;
        const Estimate now = figures().estimate;
        EditBuilder edit(m_book, "Stage");
        putHouseStage(edit, m_book, m_ids, moved, marchFirst, &now);
        apply(m_book, edit.take());
    }
    void spend(PieceOfWork work, Hours time, Quantity done = {}) {
        TimeEntry entry;
        entry.id = m_ids.next<TimeEntry>();
        entry.date = marchFirst;
        entry.person = Id<CrewMember>(201);
        entry.house = m_house;
        entry.work = work;
        entry.time = time;
        entry.done = done;
        apply(m_book, putEdit(m_book, "Hours", entry));
    }
    void say(PieceOfWork work, std::optional<Percent> done) {
        EditBuilder edit(m_book, "Say");
        putWorkDone(edit, m_book, m_ids, m_house, work, done);
        apply(m_book, edit.take());
    }
    /// Hangs every piece of so many units.
    void hang(std::size_t units) {
        const CutFigures cut = cutFiguresFor(m_book, figures());
        ASSERT_GE(cut.units.size(), units);
        for (std::size_t i = 0; i < units; ++i) {
            const OpeningUnit& unit = cut.units[i];
            const auto& kept = m_book.sheet(house().work).of<CutPiece>();
            EditBuilder edit(m_book, "Hang");
            for (CutPiece piece : ticked(cutFiguresFor(m_book, figures()).sheet,
                     piecesOf(cut.sheet, unit.opening.id.value(), unit.unit), PieceState::hung,
                     house().work, kept, m_ids))
                edit.put(std::move(piece));
            apply(m_book, edit.take());
        }
    }
    HouseProgress forecast() const {
        const JobFigures now = figures();
        return houseForecast(m_book, house(), houseBid(m_book, now), hungShares(m_book, now));
    }
    const WorkProgress& windows(const HouseProgress& progress) const {
        return *std::ranges::find(progress.works, PieceOfWork::windows, &WorkProgress::work);
    }

    static constexpr Date marchFirst{
        std::chrono::year(2026), std::chrono::March, std::chrono::day(1)};
    Book m_book = smallBook();
    IdSource m_ids{1000};
    Id<House> m_house;
};

TEST_F(HouseForecast, GoesByTheBidAsItStandsUntilItIsWon) {
    const HouseBid before = houseBid(m_book, figures());
    EXPECT_EQ(before.works, workBids(figures().estimate));
    EXPECT_EQ(before.crewRate, figures().estimate.crewRate);
    toStage(HouseStage::won);
    LabourRate slower = *m_book.prices.rate(Task::pictureFrameWindow);
    slower.minutes = MinutesPerUnit::whole(90);
    m_book.prices.of<LabourRate>().put(slower);
    EXPECT_EQ(houseBid(m_book, figures()).works, before.works) << "as it was won";
    EXPECT_EQ(houseBid(m_book, figures()).crewRate, before.crewRate);
    EXPECT_EQ(forecast().bid, windows(forecast()).bid);
}

TEST_F(HouseForecast, TakesWhatWasSaidWhereNothingIsCounted) {
    toStage(HouseStage::won);
    spend(PieceOfWork::windows, Hours::minutes(30));
    EXPECT_EQ(windows(forecast()).by, DoneBy::unknown);
    say(PieceOfWork::windows, Percent::whole(25));
    const WorkProgress said = windows(forecast());
    EXPECT_EQ(said.by, DoneBy::said);
    EXPECT_EQ(said.done, Percent::whole(25));
    EXPECT_EQ(said.forecast, Hours::minutes(120)) << "half an hour is a quarter [calc]";
}

TEST_F(HouseForecast, TakesWhatIsHungBeforeWhatWasSaid) {
    toStage(HouseStage::won);
    say(PieceOfWork::windows, Percent::whole(10));
    hang(1);
    const WorkProgress hung = windows(forecast());
    EXPECT_EQ(hung.by, DoneBy::ticks);
    EXPECT_EQ(hung.done, Percent::whole(50)) << "one of two windows";
}

TEST_F(HouseForecast, ReckonsTicksOnlyWhereThereAreAny) {
    EXPECT_TRUE(hungShares(m_book, figures()).empty());
    hang(2);
    const JobFigures now = figures();
    const auto shares = hungShares(m_book, now);
    ASSERT_EQ(shares.size(), 1U);
    EXPECT_EQ(shares.front().done, Percent::hundred());
    EXPECT_EQ(hungShares(cutFiguresFor(m_book, now)).front().done, shares.front().done);
}

TEST_F(HouseForecast, OfAFinishedHouseIsWhatItTook) {
    toStage(HouseStage::won);
    spend(PieceOfWork::windows, Hours::minutes(30));
    ASSERT_GT(forecast().forecast, Hours::minutes(30));
    toStage(HouseStage::finished);
    EXPECT_EQ(forecast().forecast, Hours::minutes(30));
    EXPECT_EQ(forecast().done, Percent::hundred());
    toStage(HouseStage::paid);
    EXPECT_EQ(forecast().forecast, Hours::minutes(30));
}

TEST_F(HouseForecast, HeedsNoOtherHousesShare) {
    HouseStart start;
    start.plan = Id<Plan>(31);
    start.name = "Lot 13";
    apply(m_book, *startHouse(m_book, m_ids, start));
    EditBuilder edit(m_book, "Say");
    putWorkDone(edit, m_book, m_ids, std::prev(m_book.jobs.of<House>().end())->first,
        PieceOfWork::windows, Percent::whole(90));
    apply(m_book, edit.take());
    EXPECT_EQ(windows(forecast()).by, DoneBy::unknown);
}

TEST_F(HouseForecast, WhatWasSaidIsOneRowThatComesAndGoes) {
    say(PieceOfWork::windows, Percent::whole(25));
    say(PieceOfWork::windows, Percent::whole(30));
    ASSERT_EQ(m_book.jobs.of<WorkDone>().size(), 1U);
    EXPECT_EQ(m_book.jobs.of<WorkDone>().begin()->second.done, Percent::whole(30));
    say(PieceOfWork::windows, std::nullopt);
    EXPECT_TRUE(m_book.jobs.of<WorkDone>().empty());
    say(PieceOfWork::windows, std::nullopt);
    EXPECT_TRUE(m_book.jobs.of<WorkDone>().empty());
}

TEST_F(HouseForecast, WhatIsCountedIsNotTypedOver) {
    const auto refusal = [&](const WorkProgress& work) {
        const auto can = canSayDone(house(), work);
        return can ? std::string() : can.error().sentence;
    };
    WorkProgress windows;
    windows.work = PieceOfWork::windows;
    EXPECT_EQ(refusal(windows), "");
    windows.by = DoneBy::said;
    EXPECT_EQ(refusal(windows), "");
    windows.by = DoneBy::ticks;
    EXPECT_EQ(refusal(windows),
        "Windows are counted by the pieces that are ticked as hung; what is counted is not typed "
        "over.");
    windows.by = DoneBy::units;
    windows.unitsDone = Quantity::count(3);
    windows.unitsBid = Quantity::count(18);
    EXPECT_EQ(refusal(windows),
        "Windows: 3 of 18 are written down as finished; what is counted is not typed over.");
    WorkProgress extras;
    extras.work = PieceOfWork::extras;
    EXPECT_EQ(refusal(extras), "Each extra is done or not; say so where it is billed.");
    toStage(HouseStage::finished);
    EXPECT_EQ(refusal(WorkProgress()), "Lot 12 is finished, and so is all of its work.");
}

} // namespace
} // namespace miterbook
