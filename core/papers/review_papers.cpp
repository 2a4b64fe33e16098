// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "basics/quote.h"
#include "job/house_review.h"
#include "job/house_stage.h"
#include "papers/cells.h"
#include "papers/exact_numbers.h"
#include "papers/heading.h"
#include "papers/plain_text.h"
#include "papers/week_papers.h"

#include <cmath>

namespace miterbook {

namespace {

/// "+12.5 %".
Cell shareCell(double share) {
    const Percent percent = Percent::basisPoints(std::llround(share * 10'000));
    return {(share > 0 ? "+" : "") + formatPercent(percent) + " %",
        exactDecimal(percent.basisPoints(), 2, 0)};
}

Cell hundredthsCell(double value) {
    const std::int64_t hundredths = std::llround(value * 100);
    const std::string text = exactDecimal(hundredths, 2, 2);
    return {text, text};
}

PaperTable workTable(const HouseResult& result, std::string_view sign) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "By piece of work";
    table.columns = {{"Piece of work", left, 20}, {"Hours bid", right, 11}, {"Used", right, 10},
        {"Over", right, 10}, {"Price", right, 14}, {"Cost", right, 14}, {"Profit bid", right, 14},
        {"Profit", right, 14}};
    for (const WorkResult& work : result.works) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(capitalised(word(work.work))), hoursCell(work.bid), hoursCell(work.used),
                hoursCell(work.used - work.bid), moneyCell(work.price, sign),
                moneyCell(work.cost, sign), moneyCell(work.bidProfit(), sign),
                moneyCell(work.profit(), sign)}});
    }
    table.rows.push_back({PaperTable::Kind::total,
        {Cell::of("All"), hoursCell(result.bid), hoursCell(result.used),
            hoursCell(result.used - result.bid), moneyCell(result.price, sign),
            moneyCell(result.cost, sign), moneyCell(result.bidProfit, sign),
            moneyCell(result.profit(), sign)}});
    return table;
}

std::vector<std::string> remarksOn(const HouseResult& result) {
    std::vector<std::string> lines;
    if (result.lost > Hours())
        lines.push_back(formatHours(result.lost)
            + " hours went into waiting and callbacks, which nobody bids; they are in the cost.");
    if (result.callbacks > 0)
        lines.push_back("Somebody was called back on " + std::to_string(result.callbacks)
            + (result.callbacks == 1 ? " day." : " days."));
    for (const WorkResult& work : result.works) {
        if (work.profit() < Money())
            lines.push_back(capitalised(word(work.work)) + " did not bring what it cost.");
    }
    return lines;
}

PaperTable groupTable(const PaperJob& job, const std::vector<HouseResult>& results, CompareBy by) {
    using enum PaperColumn::Align;
    const LengthUnit written = job.book.prices.shop().unit;
    const std::string& sign = job.book.prices.shop().currency;
    PaperTable table;
    table.title = "By " + std::string(word(by));
    table.columns = {{capitalised(word(by)), left, 34}, {"Houses", right, 9},
        {"Used, h", right, 11}, {"Profit a house", right, 15}, {"Per hour", right, 12},
        {"An opening, h", right, 13},
        {"100 " + std::string(runUnit(written)) + " base, h", right, 13}, {"Overrun", right, 11},
        {"Expected", right, 11}};
    for (const GroupResult& group : compareHouses(results, by)) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(groupName(job.book, by, group.key))), countCell(group.houses),
                hoursCell(group.used), moneyCell(group.profitPerHouse(), sign),
                moneyCell(group.profitPerHour(), sign), hundredthsCell(group.hoursPerOpening),
                hundredthsCell(group.hoursPer100(written)), shareCell(group.overrun),
                shareCell(group.expected.mean)}});
    }
    return table;
}

PaperTable lossTable(const PaperJob& job, const std::vector<Loss>& lost) {
    using enum PaperColumn::Align;
    const std::string& sign = job.book.prices.shop().currency;
    PaperTable table;
    table.title = "What loses money";
    table.columns = {{"Plan", left, 26}, {"Piece of work", left, 20}, {"Houses", right, 9},
        {"Lost", right, 14}, {"A house", right, 14}, {"Hours over", right, 12}};
    for (const Loss& loss : lost) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(groupName(job.book, CompareBy::plan, loss.plan.value()))),
                Cell::of(std::string(word(loss.work))), countCell(loss.houses),
                moneyCell(loss.lost, sign), moneyCell(loss.perHouse(), sign),
                hoursCell(loss.over)}});
    }
    return table;
}

} // namespace

Paper houseReviewPaper(const PaperJob& job, const JobFigures&) {
    Paper paper = beginPaper("house-review", "House review", job);
    addBuilder(paper, job, false);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    const House* house = job.book.house(job.house);
    const auto say = [&](std::string sentence) {
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {std::move(sentence)}});
        return paper;
    };
    if (!house)
        return say("A house is reviewed, not a plan.");
    addDate(paper, job, "Finished", house->finished);
    if (!hasSoldBid(job.book, house->work))
        return say("The house has not been won, so there is no bid to hold its hours against.");
    const HouseResult result = resultOf(job.book, *house);
    const std::string& sign = job.book.prices.shop().currency;
    if (!isFinished(*house))
        say("The house is not finished: these are its hours so far.");
    paper.blocks.emplace_back(workTable(result, sign));
    addSection(paper, "Remarks", Paragraph::Style::list, remarksOn(result));
    paper.totals = {{"profit", moneyCell(result.profit(), sign)},
        {"profit bid", moneyCell(result.bidProfit, sign)},
        {"profit per hour", moneyCell(result.profitPerHour(), sign)}};
    return paper;
}

Paper planComparisonPaper(const PaperJob& job, const JobFigures&) {
    Paper paper = beginPaper("plan-comparison", "Houses compared", shopWide(job));
    addDate(paper, job, "Date", job.date);
    const auto results = finishedResults(job.book);
    if (results.empty()) {
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No house is finished yet."}});
        return paper;
    }
    for (const CompareBy by : {CompareBy::plan, CompareBy::builder, CompareBy::year})
        paper.blocks.emplace_back(groupTable(job, results, by));
    if (const PaperTable lost = lossTable(job, losses(results)); !lost.rows.empty())
        paper.blocks.emplace_back(lost);
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
        {"Overrun: hours used over hours bid, the mean of the houses. Expected of the next house: "
         "the same drawn towards all houses, the more so the fewer there are."}});
    paper.totals.emplace_back("houses", countCell(std::ssize(results)));
    return paper;
}

} // namespace miterbook
