// SPDX-License-Identifier: GPL-3.0-or-later
// The papers of a week and of finished houses.
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"
#include "support/approved_text.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr Id<CrewMember> nell{501};
constexpr Id<CrewMember> bram{502};

Date mondayPlus(int days) {
    return addDays(Date{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(2)}, days);
}

/// The sample job with a crew, a bid that was won, and a week of hours.
class SampleWeek {
public:
    SampleWeek() {
        PriceBook& prices = m_job.book.prices;
        prices.of<CrewMember>().put({nell, "Nell Aske", Money::dollars(34), true});
        prices.of<CrewMember>().put({bram, "Bram Otley", Money::dollars(26), true});
        m_job.book.jobs.of<CrewPay>().put({Id<CrewPay>(503), bram, PayBasis::piece});
        m_job.book.jobs.of<PieceRate>().put({Id<PieceRate>(504), {}, PieceOfWork::windows,
            Task::other, UnitPrice::tenThousandths(185'000)});
        sell(PieceOfWork::doors, 20, 1'800, 2'600);
        sell(PieceOfWork::windows, 12, 900, 1'100);
        for (int day = 0; day < 5; ++day) {
            add(day, nell, PieceOfWork::doors, 8 * 60 + 15, day + 1);
            add(day, bram, PieceOfWork::windows, 7 * 60, day % 2 == 0 ? 4 : 0);
        }
        add(5, nell, PieceOfWork::punch, 90, 0, TimeKind::callback);
        m_entry.note = "Door 104 rubs";
        add(5, nell, PieceOfWork::doors, 60, 0);
    }
    void finish() {
        House house = *m_job.book.house(m_job.house);
        house.stage = HouseStage::finished;
        house.finished = mondayPlus(6);
        m_job.book.jobs.of<House>().put(house);
    }
    std::string paper(std::string_view name) const {
        PaperJob job = m_job.houseJob();
        job.date = mondayPlus(3);
        return paperText(findPaper(name)->build(job, m_job.figures));
    }

private:
    void sell(PieceOfWork work, int hours, int cost, int price) {
        m_job.book.jobs.of<SoldWork>().put({Id<SoldWork>(++m_id), m_job.ownPlan, work,
            Hours::whole(hours), Money::dollars(40 * hours), Quantity::count(15),
            Money::dollars(cost), Money::dollars(price)});
    }
    void add(int day, Id<CrewMember> person, PieceOfWork work, int minutes, int done,
        TimeKind kind = TimeKind::work) {
        m_entry.id = Id<TimeEntry>(++m_id);
        m_entry.date = mondayPlus(day);
        m_entry.person = person;
        m_entry.house = m_job.house;
        m_entry.work = work;
        m_entry.kind = kind;
        m_entry.time = Hours::minutes(minutes);
        m_entry.done = Quantity::count(done);
        m_job.book.time.change(nullptr, &m_entry);
        m_entry.note.clear();
    }

    SampleJob m_job;
    TimeEntry m_entry;
    std::int64_t m_id = 600;
};

} // namespace

TEST(HoursPapers, TimeSheet) {
    expectApproved(SampleWeek().paper("time-sheet"), "time-sheet.week.txt");
}

TEST(HoursPapers, PaySheet) {
    const std::string text = SampleWeek().paper("pay-sheet");
    expectApproved(text, "pay-sheet.week.txt");
    EXPECT_THAT(text, HasSubstr("licensed professional"));
}

TEST(HoursPapers, ATimeSheetShowsNoMoney) {
    EXPECT_THAT(SampleWeek().paper("time-sheet"), Not(HasSubstr("$")));
}

TEST(HoursPapers, HouseReview) {
    SampleWeek week;
    week.finish();
    expectApproved(week.paper("house-review"), "house-review.finished.txt");
}

TEST(HoursPapers, HousesCompared) {
    SampleWeek week;
    EXPECT_THAT(week.paper("plan-comparison"), HasSubstr("No house is finished yet."));
    week.finish();
    expectApproved(week.paper("plan-comparison"), "plan-comparison.finished.txt");
}
