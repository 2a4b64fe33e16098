// SPDX-License-Identifier: GPL-3.0-or-later
// The papers of a week and of finished houses.
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"

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

TEST(HoursPapers, TimeSheetSaysWhoDidWhat) {
    const std::string text = SampleWeek().paper("time-sheet");
    EXPECT_THAT(text, HasSubstr("Nell Aske"));
    EXPECT_THAT(text, HasSubstr("Bram Otley"));
    EXPECT_THAT(text, HasSubstr("Door 104 rubs"));
    EXPECT_THAT(text, HasSubstr("8.25"));
    EXPECT_THAT(text, Not(HasSubstr("$"))) << "what somebody earns is no business of the others";
}

TEST(HoursPapers, PaySheetPaysHoursAndPieces) {
    const std::string text = SampleWeek().paper("pay-sheet");
    EXPECT_THAT(text, HasSubstr("Before taxes and deductions"));
    EXPECT_THAT(text, HasSubstr("To be mended first")) << "two days without a count";
    EXPECT_THAT(text, HasSubstr("$222.00")) << "12 windows at 18.50";
}

TEST(HoursPapers, HouseReviewHoldsHoursAgainstTheBid) {
    SampleWeek week;
    week.finish();
    const std::string text = week.paper("house-review");
    EXPECT_THAT(text, HasSubstr("42.25")) << "hours at doors";
    EXPECT_THAT(text, HasSubstr("1.5 hours went into waiting and callbacks"));
    EXPECT_THAT(text, HasSubstr("Doors did not bring what it cost."));
}

TEST(HoursPapers, HousesCompared) {
    SampleWeek week;
    EXPECT_THAT(week.paper("plan-comparison"), HasSubstr("No house is finished yet."));
    week.finish();
    const std::string text = week.paper("plan-comparison");
    for (const char* part : {"By plan", "By builder", "By year", "What loses money", "$90.00"})
        EXPECT_THAT(text, HasSubstr(part));
}
