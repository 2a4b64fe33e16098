// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "bid/explain.h"
#include "bid/trim_cost.h"
#include "book/said_words.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/plain_text.h"

#include <array>
#include <cmath>

namespace miterbook {

namespace {

using Align = PaperColumn::Align;

/// A column of pieces of work in money, and what it holds.
struct CostColumn {
    std::string title;
    Money (*of)(const WorkTotal& work);
    bool always; ///< stands there even where it holds nothing
};

const std::array costColumns{
    CostColumn{"Labour", [](const WorkTotal& work) { return work.labour; }, true},
    CostColumn{"Material", [](const WorkTotal& work) { return work.material; }, true},
    CostColumn{"Consumables", [](const WorkTotal& work) { return work.consumables; }, false},
    CostColumn{"Overhead", [](const WorkTotal& work) { return work.overhead; }, false},
    CostColumn{"Contingency", [](const WorkTotal& work) { return work.contingency; }, false},
    CostColumn{"Allowances", [](const WorkTotal& work) { return work.allowances; }, false},
    CostColumn{"Cost", [](const WorkTotal& work) { return work.cost(); }, true},
    CostColumn{"Profit", [](const WorkTotal& work) { return work.profit; }, true},
    CostColumn{"Price", [](const WorkTotal& work) { return work.price; }, true},
};

/// What each piece of work costs and brings; the last row is the sum of those above it.
class CostTable {
public:
    CostTable(const Estimate& estimate, const std::string& symbol)
        : m_symbol(symbol) {
        for (const CostColumn& column : costColumns) {
            if (column.always || column.of(estimate.total) != Money())
                m_columns.push_back(&column);
        }
        m_table.title = "What each piece of work costs";
        m_table.columns = {{"Piece of work", Align::left, 20}, {"Hours", Align::right, 9}};
        for (const CostColumn* column : m_columns)
            m_table.columns.push_back({column->title, Align::right, 13});
        for (const WorkTotal& work : estimate.works)
            add(PaperTable::Kind::plain, capitalised(word(work.work)), work);
        add(PaperTable::Kind::total, "Whole house", estimate.total);
    }

    PaperTable take() { return std::move(m_table); }

private:
    void add(PaperTable::Kind kind, std::string name, const WorkTotal& work) {
        PaperTable::Row row{kind, {Cell::of(std::move(name)), hoursCell(work.hours)}};
        for (const CostColumn* column : m_columns)
            row.cells.push_back(moneyCell(column->of(work), m_symbol));
        m_table.rows.push_back(std::move(row));
    }

    const std::string& m_symbol;
    std::vector<const CostColumn*> m_columns;
    PaperTable m_table;
};

Cell minutesCell(MinutesPerUnit minutes) {
    const std::string text = formatMinutesPerUnit(minutes);
    return {text, text};
}

/// To the hundredth; nothing where no condition changes the minutes.
Cell factorCell(double factor) {
    const auto hundredths = std::llround(factor * 100);
    if (hundredths == 100)
        return {{}, "1"};
    const std::string text = formatQuantity(Quantity::thousandths(hundredths * 10), 2);
    return {text, text};
}

/// Task by task: quantity, minutes for one, what the conditions make of them, hours and labour.
PaperTable hoursTable(const Estimate& estimate, const Shop& shop) {
    const std::string& symbol = shop.currency;
    PaperTable table;
    table.title = "Where the hours come from";
    table.columns = {{"Piece of work", Align::left, 19, true}, {"Task", Align::left, 32},
        {"Conditions", Align::left, 30}, {"Quantity", Align::right, 10}, {"Unit", Align::left, 7},
        {"Min. a unit", Align::right, 9}, {"Factor", Align::right, 8}, {"Hours", Align::right, 8},
        {"Labour", Align::right, 13}};
    for (const EstimateLine& line : estimate.lines) {
        const Unit unit = unitOf(line.task);
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(capitalised(word(line.work))),
                Cell::of(std::string(said(line.task, shop.unit))),
                Cell::of(said(line.conditions, shop.unit)),
                quantityCell(amountSaid(line.quantity, unit, shop.unit)),
                Cell::of(unitText(unit, shop.unit)),
                minutesCell(minutesSaid(line.minutes, unit, shop.unit)), factorCell(line.factor),
                hoursCell(line.hours), moneyCell(line.labour, symbol)}});
    }
    const WorkTotal& total = estimate.total;
    if (!table.rows.empty()) {
        table.rows.push_back({PaperTable::Kind::total,
            {Cell::of("Whole house"), {}, {}, {}, {}, {}, {}, hoursCell(total.hours),
                moneyCell(total.labour, symbol)}});
    }
    return table;
}

/// The feet that are bought of a profile, and what it is bought for.
struct Bought {
    Length running;
    int sticks = 0;
};

Bought boughtOf(Id<Profile> profile, const BuyList& buy) {
    Bought bought;
    for (const BuyLine& line : buy.sticks) {
        if (line.profile != profile)
            continue;
        bought.sticks += line.count + line.spare;
        bought.running += line.length * (line.count + line.spare);
    }
    return bought;
}

/// Cost over the running length that is used, for a foot or metre; nothing where none is.
Cell costOfOneCell(Money cost, Length running, const Shop& shop) {
    if (running <= Length())
        return {};
    const Wide cents = Wide(cost.cents()) * runOne(shop.unit).nm();
    return moneyCell(Money::cents(roundedQuotient(cents, running.nm())), shop.currency);
}

/// Profile by profile: what is used, what is bought for it, and what a used foot comes to.
PaperTable stickTable(const JobFigures& figures, const PriceBook& prices) {
    const Shop& shop = prices.shop();
    const std::string& symbol = shop.currency;
    const std::string unit = unitText(Unit::linearFoot, shop.unit);
    const bool metric = shop.unit == LengthUnit::millimetres;
    PaperTable table;
    table.title = "What the sticks cost, before tax";
    table.columns = {{"Profile", Align::left, 40}, {"Used, " + unit, Align::right, 12},
        {"Sticks", Align::right, 9}, {"Bought, " + unit, Align::right, 12},
        {"Cost", Align::right, 14}, {metric ? "A used metre" : "A used foot", Align::right, 12}};
    std::vector<std::string> saidAbove; // by the estimate's own problems
    const Coverage coverage(figures.takeoff, prices, figures.setup);
    Money sum;
    for (const ProfileCost& cost : profileCosts(figures.takeoff, figures.sticks, prices,
             figures.setup.waste, coverage, saidAbove)) {
        const Bought bought = boughtOf(cost.profile, figures.buy);
        const Length used = cost.running.sum();
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(std::string(prices.profileName(cost.profile))),
                quantityCell(runSaid(used, shop.unit)), countCell(bought.sticks),
                quantityCell(runSaid(bought.running, shop.unit)), moneyCell(cost.cost, symbol),
                costOfOneCell(cost.cost, used, shop)}});
        sum += cost.cost;
    }
    if (!table.rows.empty()) {
        table.rows.push_back({PaperTable::Kind::total,
            {Cell::of("All sticks"), {}, {}, {}, moneyCell(sum, symbol), {}}});
    }
    return table;
}

void addFacts(Paper& paper, const PaperJob& job) {
    addBuilder(paper, job, false);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    addDate(paper, job, "Date", job.date);
}

void addUnlessEmpty(Paper& paper, PaperTable table) {
    if (!table.rows.empty())
        paper.blocks.emplace_back(std::move(table));
}

void addTotals(Paper& paper, const Estimate& estimate, const Shop& shop) {
    const std::string& symbol = shop.currency;
    const auto percent = [](Percent share) {
        return Cell{formatPercent(share) + " %", formatPercent(share)};
    };
    paper.totals.emplace_back("hours", hoursCell(estimate.total.hours));
    paper.totals.emplace_back("cost", moneyCell(estimate.total.cost(), symbol));
    paper.totals.emplace_back("markup on cost", percent(estimate.markup));
    paper.totals.emplace_back("margin on price", percent(estimate.margin));
    paper.totals.emplace_back("a man-hour after material", moneyCell(estimate.perManHour, symbol));
    if (estimate.perSquareFoot > Money())
        paper.totals.emplace_back("a " + std::string(floorUnitName(shop.unit)),
            moneyCell(floorPriceSaid(estimate.perSquareFoot, shop.unit), symbol));
    paper.totals.emplace_back("price", moneyCell(estimate.total.price, symbol));
}

} // namespace

Paper worksheetPaper(const PaperJob& job, const JobFigures& figures) {
    const PriceBook prices = pricesOfBid(pricesFor(job.book, job.plan), figures.setup);
    const std::string& symbol = prices.shop().currency;
    const Estimate& estimate = figures.estimate;
    Paper paper = beginPaper("worksheet", "Bid worksheet", job);
    addFacts(paper, job);
    paper.blocks.emplace_back(
        Paragraph{Paragraph::Style::caution, {"For the shop only: it says what the house costs."}});
    addIncomplete(paper, job, figures, estimate.problems);
    if (estimate.works.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"Nothing is priced yet."}});
    else
        paper.blocks.emplace_back(CostTable(estimate, symbol).take());
    addSection(paper, "How the price is reached", Paragraph::Style::list,
        explainPrice(estimate, figures.setup, symbol));
    addUnlessEmpty(paper, hoursTable(estimate, prices.shop()));
    addSection(
        paper, "What an hour costs", Paragraph::Style::list, explainCrewRate(prices));
    addUnlessEmpty(paper, stickTable(figures, prices));
    addTotals(paper, estimate, prices.shop());
    return paper;
}

} // namespace miterbook
