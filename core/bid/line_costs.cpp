// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/line_costs.h"

#include "basics/number_text.h"
#include "bid/coverage.h"
#include "bid/estimate_lines.h"
#include "bid/trim_cost.h"
#include "book/said_words.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace miterbook {

namespace {

using RowKey = std::pair<PieceOfWork, Origins>;

constexpr double grain = 10'000; // parts of a cent that weights are counted in

/// What sticks, parts and goods of each row of the plan cost, in parts of a cent: weights only.
std::map<RowKey, double> materialByRow(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup) {
    std::vector<std::string> unsaid;
    std::map<Id<Profile>, double> perNm;
    for (const ProfileCost& cost : profileCosts(
             takeoff, sticks, prices, setup.waste, Coverage(takeoff, prices, setup), unsaid)) {
        const auto running = static_cast<double>(cost.running.sum().nm());
        if (running > 0)
            perNm[cost.profile] = static_cast<double>(cost.cost.cents()) / running;
    }
    std::map<RowKey, double> rows;
    for (const Piece& piece : takeoff.pieces) {
        const auto length = static_cast<double>((piece.longPoint * piece.count).nm());
        rows[{piece.work, piece.source.row}] += std::max(0.0, length) * perNm[piece.profile];
    }
    for (const PartCount& count : takeoff.parts) {
        const Part* part = prices.part(count.use);
        if (part && !part->builderSupplies)
            rows[{count.work, count.source.row}] += static_cast<double>(
                (part->price * count.count).cents());
    }
    for (const BoughtGoods& goods : takeoff.goods)
        rows[{goods.work, goods.source.row}] += static_cast<double>(goods.cost.cents());
    return rows;
}

/// Shares the material of rows over the lines of an estimate.
class Spreader {
public:
    Spreader(const Estimate& estimate, const Takeoff& takeoff)
        : m_lines(estimate.lines)
        , m_weights(estimate.lines.size(), 0.0) {
        for (const TaskCount& task : takeoff.tasks) {
            const std::size_t line = lineOf(task);
            if (line == m_lines.size())
                continue;
            const double minutes = task.quantity.toDouble() * m_lines[line].minutes.toDouble()
                * m_lines[line].factor;
            m_tasks[{task.work, task.source.row}].push_back({line, minutes});
        }
    }

    void spread(const RowKey& row, double cost) {
        const auto tasks = m_tasks.find(row);
        if (tasks == m_tasks.end())
            return;
        double all = 0;
        for (const auto& [line, minutes] : tasks->second)
            all += minutes;
        const auto count = static_cast<double>(tasks->second.size());
        for (const auto& [line, minutes] : tasks->second)
            m_weights[line] += cost * (all > 0 ? minutes / all : 1 / count);
    }

    const std::vector<double>& weights() const { return m_weights; }

private:
    std::size_t lineOf(const TaskCount& task) const {
        const auto it = std::ranges::find_if(m_lines, [&](const EstimateLine& line) {
            return line.work == task.work && line.task == task.task
                && line.conditions == task.conditions;
        });
        return static_cast<std::size_t>(it - m_lines.begin());
    }

    const std::vector<EstimateLine>& m_lines;
    std::map<RowKey, std::vector<std::pair<std::size_t, double>>> m_tasks;
    std::vector<double> m_weights;
};

std::int64_t grains(double cents) {
    return std::llround(std::max(0.0, cents) * grain);
}

Money withProfit(Money cost, const BidSetup& setup) {
    return setup.profitKind == ProfitKind::markupOnCost
        ? priceAtMarkup(cost, setup.profit)
        : priceAtMargin(cost, setup.profit).valueOr(cost);
}

/// The costs of the lines of one piece of work, from `first`: they add up to the work's own.
void costLines(std::vector<LineBothWays>& lines, std::size_t first, std::size_t count,
    const Estimate& estimate, const std::vector<double>& material) {
    const PieceOfWork work = estimate.lines[first].work;
    const auto total = std::ranges::find(estimate.works, work, &WorkTotal::work);
    if (total == estimate.works.end())
        return;
    std::vector<std::int64_t> byMaterial;
    std::vector<std::int64_t> byLabour;
    for (std::size_t i = first; i < first + count; ++i) {
        byMaterial.push_back(grains(material[i]));
        byLabour.push_back(grains(static_cast<double>(estimate.lines[i].labour.cents())));
    }
    const bool any = std::ranges::any_of(
        byMaterial, [](std::int64_t weight) { return weight > 0; });
    const auto goods = shareOut(total->material + total->consumables, any ? byMaterial : byLabour);
    std::vector<std::int64_t> direct;
    for (std::size_t i = 0; i < count; ++i)
        direct.push_back((estimate.lines[first + i].labour + goods[i]).cents());
    const auto onTop = shareOut(total->overhead + total->contingency, direct);
    for (std::size_t i = 0; i < count; ++i)
        lines[first + i].cost = estimate.lines[first + i].labour + goods[i] + onTop[i];
}

} // namespace

std::vector<LineBothWays> linesBothWays(const Estimate& estimate, const Takeoff& takeoff,
    const std::vector<StickPlan>& sticks, const PriceBook& prices, const BidSetup& setup) {
    Spreader spreader(estimate, takeoff);
    for (const auto& [row, cost] : materialByRow(takeoff, sticks, prices, setup))
        spreader.spread(row, cost);
    std::vector<LineBothWays> lines(estimate.lines.size());
    for (std::size_t first = 0; first < lines.size();) {
        std::size_t count = 1;
        while (first + count < lines.size()
            && estimate.lines[first + count].work == estimate.lines[first].work)
            ++count;
        costLines(lines, first, count, estimate, spreader.weights());
        first += count;
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        lines[i].byCost = withProfit(lines[i].cost, setup);
        lines[i].byPiece = estimate.lines[i].piecePrice;
        lines[i].isByPiece = estimate.lines[i].byPiece;
    }
    return lines;
}

std::string bothWaysInWords(const LineBothWays& line, std::string_view currency) {
    if (!line.byPiece)
        return {};
    const auto money = [&](Money amount) { return formatMoney(amount, currency); };
    if (line.loses())
        return "loses " + money(line.cost - *line.byPiece) + " at your piece price";
    if (*line.byPiece < line.byCost) {
        return "covers its cost, " + money(line.byCost - *line.byPiece)
            + " short of the profit asked";
    }
    if (*line.byPiece == line.byCost)
        return "comes to the same";
    return "brings " + money(*line.byPiece - line.byCost) + " more than cost and profit";
}

namespace {

/// Lines that a sentence names: lines of one task differ in conditions only and are named once.
class NamedLines {
public:
    explicit NamedLines(LengthUnit written)
        : m_written(written) {}
    void add(const EstimateLine& line, Money amount) {
        m_amount += amount;
        const std::string name(said(line.task, m_written));
        const auto known = std::ranges::find(m_names, name, &Name::first);
        if (known == m_names.end())
            m_names.emplace_back(name, 1);
        else
            ++known->second;
    }
    bool empty() const { return m_names.empty(); }
    Money amount() const { return m_amount; }
    /// "window, picture frame (2 lines); base, one piece"
    std::string inWords() const {
        std::string words;
        for (const auto& [name, lines] : m_names) {
            words += (words.empty() ? "" : "; ") + name;
            if (lines > 1)
                words += " (" + std::to_string(lines) + " lines)";
        }
        return words;
    }

private:
    using Name = std::pair<std::string, int>;
    LengthUnit m_written;
    std::vector<Name> m_names;
    Money m_amount;
};

} // namespace

std::vector<std::string> bothWaysSummary(
    const Estimate& estimate, const std::vector<LineBothWays>& lines, const Shop& shop) {
    const std::string& currency = shop.currency;
    NamedLines losing(shop.unit);
    NamedLines carrying(shop.unit);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const LineBothWays& line = lines[i];
        if (!line.byPiece)
            continue;
        if (line.loses())
            losing.add(estimate.lines[i], line.cost - *line.byPiece);
        else if (*line.byPiece > line.byCost)
            carrying.add(estimate.lines[i], *line.byPiece - line.byCost);
    }
    std::vector<std::string> sentences;
    if (!losing.empty())
        sentences.push_back("At your piece prices these lose "
            + formatMoney(losing.amount(), currency) + " in all: " + losing.inWords() + ".");
    if (!carrying.empty())
        sentences.push_back("These carry the house, " + formatMoney(carrying.amount(), currency)
            + " over cost and profit: " + carrying.inWords() + ".");
    return sentences;
}

} // namespace miterbook
