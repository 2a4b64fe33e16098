// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate.h"
#include "papers/job_papers.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::HasSubstr;
using testing::Not;

namespace {

const PaperTable& tableOf(const Paper& paper, std::string_view title) {
    for (const Block& block : paper.blocks) {
        const auto* table = std::get_if<PaperTable>(&block);
        if (table && table->title == title)
            return *table;
    }
    throw std::runtime_error("no table " + std::string(title));
}

std::size_t columnOf(const PaperTable& table, std::string_view title) {
    const auto column = std::ranges::find(table.columns, title, &PaperColumn::title);
    return static_cast<std::size_t>(column - table.columns.begin());
}

std::int64_t cents(const Cell& cell) {
    std::string digits = cell.exact;
    digits.erase(digits.find('.'), 1);
    return std::stoll(digits);
}

/// Checks that a column's rows add up to its last one, and says what that is.
std::int64_t sumOf(const PaperTable& table, std::string_view title) {
    const std::size_t column = columnOf(table, title);
    std::int64_t sum = 0;
    for (const PaperTable::Row& row : table.rows) {
        if (row.kind == PaperTable::Kind::plain)
            sum += cents(row.cells.at(column));
    }
    EXPECT_EQ(sum, cents(table.rows.back().cells.at(column))) << title;
    return sum;
}

} // namespace

TEST(WorksheetPaper, EachColumnAddsUpToTheEstimate) {
    SampleJob job;
    const WorkTotal& total = job.figures.estimate.total;
    const Paper paper = worksheetPaper(job.planJob(), job.figures);
    const PaperTable& works = tableOf(paper, "What each piece of work costs");
    EXPECT_EQ(sumOf(works, "Labour"), total.labour.cents());
    EXPECT_EQ(sumOf(works, "Material"), total.material.cents());
    EXPECT_EQ(sumOf(works, "Overhead"), total.overhead.cents());
    EXPECT_EQ(sumOf(works, "Cost"), total.cost().cents());
    EXPECT_EQ(sumOf(works, "Profit"), total.profit.cents());
    EXPECT_EQ(sumOf(works, "Price"), total.price.cents());
}

TEST(WorksheetPaper, HoursGoTaskByTask) {
    SampleJob job;
    Estimate& estimate = job.figures.estimate;
    estimate.total.labour = Money::dollars(100);
    for (const auto& [task, labour] : {std::pair{Task::pictureFrameWindow, 60}, {Task::base, 40}}) {
        EstimateLine line;
        line.task = task;
        line.quantity = Quantity::count(6);
        line.minutes = MinutesPerUnit::whole(30);
        line.factor = 1.25;
        line.labour = Money::dollars(labour);
        estimate.lines.push_back(line);
    }
    const Paper paper = worksheetPaper(job.planJob(), job.figures);
    const PaperTable& hours = tableOf(paper, "Where the hours come from");
    EXPECT_EQ(sumOf(hours, "Labour"), 10'000);
    EXPECT_EQ(hours.rows.front().cells.at(columnOf(hours, "Factor")).exact, "1.25");
    EXPECT_EQ(hours.rows.front().cells.at(columnOf(hours, "Min. a unit")).exact, "30");
}

TEST(WorksheetPaper, SaysContingencyOnlyWhereThereIsOne) {
    SampleJob job;
    EXPECT_THAT(paperText(worksheetPaper(job.planJob(), job.figures)), Not(HasSubstr("Conting")));
    WorkTotal& work = job.figures.estimate.works.front();
    work.contingency += Money::dollars(50);
    job.figures.estimate.total.contingency += Money::dollars(50);
    const Paper paper = worksheetPaper(job.planJob(), job.figures);
    EXPECT_EQ(sumOf(tableOf(paper, "What each piece of work costs"), "Contingency"), 5'000);
    EXPECT_THAT(paperText(paper), HasSubstr("Contingency at"));
}

TEST(WorksheetPaper, SaysThatItIsForTheShopOnly) {
    const SampleJob job;
    EXPECT_THAT(paperText(worksheetPaper(job.planJob(), job.figures)),
        HasSubstr("For the shop only"));
}
