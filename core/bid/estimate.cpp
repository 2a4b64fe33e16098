// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate.h"

#include "bid/coverage.h"
#include "bid/estimate_lines.h"
#include "bid/goods_cost.h"
#include "bid/price_rules.h"
#include "bid/trim_cost.h"
#include "book/said_words.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Costs and prices of all halves of all pieces of work.
struct Build {
    PerWork<Hours> hours;
    PerWork<Money> labour;
    PerWork<Money> material;
    PerWork<Money> consumables;
    PerWork<Money> overhead;
    PerWork<Money> profit;
    PerWork<Money> allowances;
    PerWork<Money> contingency;

    PerWork<Money> direct() const {
        PerWork<Money> sum = labour;
        sum += material;
        sum += consumables;
        return sum;
    }
    /// All but the allowances, on which nothing is earned.
    PerWork<Money> cost() const {
        PerWork<Money> sum = direct();
        sum += overhead;
        sum += contingency;
        return sum;
    }
};

/// One estimate being made.
class Estimator {
public:
    Estimator(const Takeoff& takeoff, const PriceBook& prices, const BidSetup& setup)
        : m_takeoff(takeoff)
        , m_prices(prices)
        , m_setup(setup)
        , m_coverage(takeoff, prices, setup) {}

    Estimate make(const std::vector<StickPlan>& sticks, int floorArea) {
        m_estimate.pricing = m_setup.pricing;
        takeProblems();
        takeLabour();
        takeMaterial(sticks);
        m_build.overhead = shareOut(
            share(m_build.direct().sum(), m_setup.overhead), m_build.direct());
        m_build.contingency = shareOut(
            share(m_build.direct().sum(), m_setup.contingency), m_build.direct());
        takeProfit();
        takeAllowances();
        takePriceRules();
        takeWorks();
        takeFigures(floorArea);
        return std::move(m_estimate);
    }

private:
    void takeProblems() {
        for (const Remark& remark : m_takeoff.remarks) {
            if (remark.weight == Remark::Weight::problem)
                m_estimate.problems.push_back(remark.sentence);
        }
    }

    void takeLabour() {
        m_estimate.crewRate = m_prices.crewRate();
        if (m_estimate.crewRate == Money() && !m_takeoff.tasks.empty())
            m_estimate.problems.push_back(
                "The book has no active crew with a wage; labour costs nothing here.");
        m_estimate.lines = estimateLines(
            m_takeoff, m_prices, m_estimate.crewRate, m_estimate.problems);
        for (EstimateLine& line : m_estimate.lines) {
            const Half half = m_coverage.half(line.task);
            line.byPiece = half == Half::byPiece;
            m_build.hours.at(line.work, half) += line.hours;
            m_build.labour.at(line.work, half) += line.labour;
        }
    }

    /// The tax is on all of the material together and shared by what it is on, as delivery is.
    void takeMaterial(const std::vector<StickPlan>& sticks) {
        PerWork<Length> running;
        PerWork<Money> bare;
        for (const ProfileCost& profile : profileCosts(
                 m_takeoff, sticks, m_prices, m_setup.waste, m_coverage, m_estimate.problems)) {
            running += profile.running;
            bare += profile.shares;
        }
        bare += goodsCosts(m_takeoff, m_prices, m_coverage, m_estimate.problems);
        m_build.material = bare;
        m_build.material += shareOut(share(bare.sum(), m_prices.terms().materialTax), bare);
        if (bare.sum() > Money())
            m_build.material += shareOut(m_setup.delivery, bare);
        m_build.consumables = consumableCosts(running, m_prices);
    }

    Money priceOf(Money cost) {
        if (m_setup.profitKind == ProfitKind::markupOnCost)
            return priceAtMarkup(cost, m_setup.profit);
        const Result<Money> price = priceAtMargin(cost, m_setup.profit);
        if (!price)
            m_estimate.problems.push_back(price.error().sentence);
        return price.valueOr(cost);
    }

    void takeProfit() {
        PerWork<Money> byCost = m_build.cost();
        for (const auto& each : Words<PieceOfWork>::list)
            byCost.at(each.value, Half::byPiece) = Money();
        m_build.profit = shareOut(priceOf(byCost.sum()) - byCost.sum(), byCost);
        const bool anyByPiece = std::ranges::any_of(
            m_estimate.lines, [](const EstimateLine& line) { return line.byPiece; });
        if (anyByPiece || m_setup.pricing == Pricing::piecePrices) {
            takePiecePrices();
            priceOtherLines();
        }
    }

    /// What the piece prices leave over the cost of what they cover.
    void takePiecePrices() {
        const PerWork<Money> cost = m_build.cost();
        for (const auto& each : Words<PieceOfWork>::list)
            m_build.profit.at(each.value, Half::byPiece) -= cost.at(each.value, Half::byPiece);
        for (EstimateLine& line : m_estimate.lines) {
            if (!line.byPiece)
                continue;
            line.price = line.piecePrice.value_or(Money());
            m_build.profit.at(line.work, Half::byPiece) += line.price;
        }
    }

    /// Lines without a piece price share by labour what the cost of their piece of work brings.
    void priceOtherLines() {
        PerWork<Money> price = m_build.cost();
        price += m_build.profit;
        std::string tasks;
        for (auto first = m_estimate.lines.begin(); first != m_estimate.lines.end();) {
            const auto last = std::find_if(first, m_estimate.lines.end(),
                [&](const EstimateLine& line) { return line.work != first->work; });
            priceOtherLines(first, last, price.at(first->work, Half::byCost), tasks);
            first = last;
        }
        if (!tasks.empty() && m_setup.pricing == Pricing::piecePrices)
            m_estimate.notes.push_back("Priced by cost, for want of a piece price: " + tasks + ".");
    }

    using Line = std::vector<EstimateLine>::iterator;

    void priceOtherLines(Line first, Line last, Money price, std::string& tasks) {
        std::vector<EstimateLine*> lines;
        std::vector<std::int64_t> weights;
        for (; first != last; ++first) {
            if (first->byPiece)
                continue;
            const bool named = !lines.empty() && lines.back()->task == first->task;
            if (!first->piecePrice && !named)
                tasks += (tasks.empty() ? "" : ", ")
                    + std::string(said(first->task, m_prices.shop().unit));
            lines.push_back(&*first);
            weights.push_back(first->labour.cents());
        }
        if (lines.empty())
            return;
        const std::vector<Money> shares = shareOut(price, weights);
        for (std::size_t i = 0; i < lines.size(); ++i)
            lines[i]->price = shares[i];
    }

    void takeAllowances() {
        for (const Allowance& allowance : m_setup.allowances)
            m_build.allowances.at(allowance.work, Half::byCost) += allowance.amount;
    }

    /// What the rules add is profit, shared by price.
    void takePriceRules() {
        PerWork<Money> price = m_build.cost();
        price += m_build.profit;
        price += m_build.allowances;
        const RuledPrice ruled = ruledPrice(
            price.sum(), m_setup.minimum, m_setup.roundTo, m_prices.shop().currency);
        if (ruled.added == Money())
            return;
        for (Money& each : price)
            each = std::max(each, Money());
        m_build.profit += shareOut(ruled.added, price);
        m_estimate.notes.insert(m_estimate.notes.end(), ruled.notes.begin(), ruled.notes.end());
    }

    void takeWorks() {
        for (const auto& [work, text] : Words<PieceOfWork>::list) {
            WorkTotal total{work, m_build.hours.of(work), m_build.labour.of(work),
                m_build.material.of(work), m_build.consumables.of(work), m_build.overhead.of(work),
                m_build.profit.of(work), Money(), m_build.allowances.of(work),
                m_build.contingency.of(work)};
            total.price = total.cost() + total.profit;
            const bool hasLine = std::ranges::any_of(
                m_estimate.lines, [&](const EstimateLine& line) { return line.work == work; });
            if (!hasLine && total.cost() == Money() && total.profit == Money())
                continue;
            add(m_estimate.total, total);
            m_estimate.works.push_back(total);
        }
    }

    static void add(WorkTotal& sum, const WorkTotal& work) {
        sum.hours += work.hours;
        sum.labour += work.labour;
        sum.material += work.material;
        sum.consumables += work.consumables;
        sum.overhead += work.overhead;
        sum.profit += work.profit;
        sum.price += work.price;
        sum.allowances += work.allowances;
        sum.contingency += work.contingency;
    }

    void takeFigures(int floorArea) {
        const WorkTotal& total = m_estimate.total;
        m_estimate.markup = markupOf(total.cost(), total.price);
        m_estimate.margin = marginOf(total.cost(), total.price);
        const Money left = total.price - total.material - total.consumables - total.allowances;
        if (total.hours > Hours())
            m_estimate.perManHour = Money::cents(
                roundedQuotient(Wide(left.cents()) * 60, total.hours.minutes()));
        if (floorArea > 0)
            m_estimate.perSquareFoot = Money::cents(
                roundedQuotient(total.price.cents(), floorArea));
    }

    const Takeoff& m_takeoff;
    const PriceBook& m_prices;
    const BidSetup& m_setup;
    Coverage m_coverage;
    Build m_build;
    Estimate m_estimate;
};

} // namespace

Estimate estimate(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup, int floorArea) {
    return Estimator(takeoff, prices, setup).make(sticks, floorArea);
}

} // namespace miterbook
