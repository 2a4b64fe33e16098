// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/opening_units.h"
#include "io/measures.h"

#include "core/io/book_fixture.h"

#include <gmock/gmock.h>

using namespace miterbook;

namespace {

Opening window(std::int64_t id, Id<Plan> plan, const std::string& mark, int count = 1) {
    Opening row;
    row.id = Id<Opening>(id);
    row.plan = plan;
    row.position = static_cast<int>(id);
    row.mark = mark;
    row.count = count;
    row.width = Length::inches(36);
    row.height = Length::inches(60);
    return row;
}

class Measures : public testing::Test {
protected:
    void SetUp() override {
        Plan plan;
        plan.id = m_plan;
        plan.name = "Lot 9";
        m_book.jobs.of<Plan>().put(plan);
        Table<Opening>& openings = m_book.sheets[m_plan].of<Opening>();
        openings.put(window(11, m_plan, "W1"));
        openings.put(window(12, m_plan, "W2", 2));
    }
    MeasureReading read(const std::string& csv) {
        const auto reading = readMeasures(csv, m_book, m_plan);
        EXPECT_TRUE(reading.ok());
        return reading.ok() ? *reading : MeasureReading();
    }

    Id<Plan> m_plan{7};
    Book m_book;
    IdSource m_ids{100};
};

} // namespace

TEST_F(Measures, AreReadByTitle) {
    const auto reading = read("Opening,Width top,Width bottom,Height left,Height right,Diag. up,"
                              "Diag. down,Jamb,Note\n"
                              "w1,36 1/8,36,60,60 1/16,70,69 7/8,-1/8,loose\n"
                              "W2.2,35.5,35.5,59,59,,,+1/16,\n");
    ASSERT_EQ(reading.rows.size(), 2U);
    EXPECT_TRUE(reading.rejected.empty());
    const Measure& first = reading.rows[0];
    EXPECT_EQ(first.opening, Id<Opening>(11));
    EXPECT_EQ(first.widthTop, Length::sixteenths(36 * 16 + 2));
    EXPECT_EQ(first.heightRight, Length::sixteenths(60 * 16 + 1));
    EXPECT_EQ(first.diagonalDown, Length::sixteenths(69 * 16 + 14));
    EXPECT_EQ(first.proud, -Length::sixteenths(2));
    EXPECT_EQ(first.note, "loose");
    EXPECT_GT(first.position, 0);
    EXPECT_EQ(reading.rows[1].unit, 2);
    EXPECT_EQ(reading.rows[1].proud, Length::sixteenths(1));
    EXPECT_GT(reading.rows[1].position, first.position);
    EXPECT_LT(reading.rows[1].position, placeStep) << "before openings that the file does not name";
}

TEST_F(Measures, OneWidthStandsForBothEnds) {
    const auto reading = read("mark;width;height\nW1;36;60\n");
    ASSERT_EQ(reading.rows.size(), 1U);
    EXPECT_EQ(reading.rows[0].widthTop, Length::inches(36));
    EXPECT_EQ(reading.rows[0].widthBottom, Length::inches(36));
    EXPECT_EQ(reading.rows[0].widthMiddle, Length());
    EXPECT_EQ(reading.rows[0].heightRight, Length::inches(60));
}

TEST_F(Measures, KeepWhatAnEmptyCellDoesNotSay) {
    Measure before;
    before.id = Id<Measure>(50);
    before.plan = m_plan;
    before.opening = Id<Opening>(11);
    before.heightLeft = Length::inches(59);
    m_book.sheets[m_plan].of<Measure>().put(before);
    const auto reading = read("Main level\nopening,width top,height left,color\nW1,36,,red\n");
    ASSERT_EQ(reading.rows.size(), 1U);
    EXPECT_EQ(reading.rows[0].id, before.id);
    EXPECT_EQ(reading.rows[0].heightLeft, Length::inches(59));
    EXPECT_EQ(reading.unmapped, std::vector<std::string>{"color"});
    const Edit edit = measuresEdit(m_book, m_ids, m_plan, reading, "main.csv");
    EXPECT_EQ(edit.sentence, "Bring in 1 measure from main.csv");
    ASSERT_EQ(edit.changes.size(), 1U);
    EXPECT_TRUE(edit.changes[0].before);
}

TEST_F(Measures, SayEachRowThatCannotBeRead) {
    const auto reading = read("opening,width top\nW1,thirty\nW9,36\nW2.1,36\nW2.1,37\n");
    ASSERT_EQ(reading.rejected.size(), 3U);
    EXPECT_THAT(MeasureReading::sentence(reading.rejected[0]), testing::HasSubstr("line 2, W1: "));
    EXPECT_THAT(reading.rejected[1].reason, testing::HasSubstr("no trimmed opening"));
    EXPECT_THAT(reading.rejected[2].reason, testing::HasSubstr("twice"));
    EXPECT_EQ(reading.rows.size(), 1U);
}

TEST_F(Measures, NeedARowOfTitles) {
    EXPECT_FALSE(readMeasures("W1,36,60\n", m_book, m_plan).ok());
    EXPECT_FALSE(readMeasures("", m_book, m_plan).ok());
}
