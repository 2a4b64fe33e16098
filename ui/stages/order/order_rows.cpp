// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/order_rows.h"

#include "figures/figure_cells.h"

#include <algorithm>

namespace miterbook {

namespace {

const StickPlan* planOf(const JobFigures& figures, Id<Profile> profile) {
    const auto it = std::ranges::find(figures.sticks, profile, &StickPlan::profile);
    return it == figures.sticks.end() ? nullptr : &*it;
}

QString planText(const JobFigures& figures, Id<Profile> profile, const PriceBook& prices) {
    const StickPlan* plan = planOf(figures, profile);
    if (!plan)
        return {};
    return QObject::tr("%1 of pieces; the sticks cost %2, %3.")
        .arg(runText(plan->needed, prices.shop().unit),
            text(formatMoney(plan->cost, prices.shop().currency)), boundText({*plan}, prices));
}

FigureCell stickCell(Length stick, const PriceBook& prices) {
    return {stickText(stick, prices.shop()), static_cast<double>(stick.nm())};
}

FigureRow stickRow(const BuyLine& line, const JobFigures& figures, const PriceBook& prices) {
    return {{wordCell(prices.profileName(line.profile)), stickCell(line.length, prices),
                countCell(line.count), countCell(line.spare), moneyCell(line.price),
                moneyCell(line.cost())},
        planText(figures, line.profile, prices), false};
}

FigureRow rackRow(const RackLine& line, const PriceBook& prices) {
    return {{wordCell(prices.profileName(line.profile)), stickCell(line.length, prices),
                countCell(line.count), wordCell("from the rack"), emptyCell(), emptyCell()},
        QObject::tr("An offcut on hand: it is used before a stick is bought."), false};
}

FigureRow partRow(const PartLine& line) {
    const bool builders = line.builderSupplies;
    return {{wordCell(line.name), wordCell("each"), countCell(line.count),
                wordCell(builders ? "builder supplies" : ""), moneyCell(line.price),
                moneyCell(line.cost())},
        QObject::tr("Counted in the takeoff."), false};
}

QString piecesText(const CutPattern& pattern, LengthStyle style) {
    QStringList all;
    for (std::size_t i = 0; i < pattern.pieces.size();) {
        const auto end = std::find_if(pattern.pieces.begin() + static_cast<std::ptrdiff_t>(i),
            pattern.pieces.end(), [&](Length other) { return other != pattern.pieces[i]; });
        const auto count = end - pattern.pieces.begin() - static_cast<std::ptrdiff_t>(i);
        const QString length = text(formatLength(pattern.pieces[i], style));
        all << (count == 1 ? length : QStringLiteral("%1 × %2").arg(count).arg(length));
        i += static_cast<std::size_t>(count);
    }
    return all.join(QStringLiteral(" + "));
}

FigureRow patternRow(const StickPlan& plan, const CutPattern& pattern, const PriceBook& prices) {
    const LengthStyle style = prices.shop().lengths();
    Length used;
    for (const Length piece : pattern.pieces)
        used += piece;
    FigureRow row;
    row.cells = {wordCell(prices.profileName(plan.profile)), stickCell(pattern.stick, prices),
        wordCell(pattern.offcut ? "rack" : "new"), countCell(pattern.times),
        lengthCell(pattern.stick - used, style), {piecesText(pattern, style), std::nullopt}};
    row.from = QObject::tr("Pieces by long point. What is left is before saw kerf.");
    return row;
}

} // namespace

QString boundText(const std::vector<StickPlan>& plans, const PriceBook& prices) {
    Money gap;
    bool proven = true;
    for (const StickPlan& plan : plans) {
        gap += plan.cost - plan.bound;
        proven = proven && plan.proven;
    }
    if (proven || gap <= Money())
        return QObject::tr("which cannot be bought cheaper");
    return QObject::tr("within %1 of the best possible")
        .arg(text(formatMoney(gap, prices.shop().currency)));
}

QString stickText(Length stick, const Shop& shop) {
    const bool inFeet = stick.nm() % Length::feet(1).nm() == 0;
    if (inFeet || shop.unit == LengthUnit::millimetres)
        return text(stickText(stick, shop.unit));
    return text(formatLengthWithUnit(stick, {LengthUnit::feetInches, 16})); // as the yard lists it
}

QString runText(Length run, LengthUnit written) {
    return QStringLiteral("%1 %2").arg(
        text(formatRun(run, written)), text(unitText(Unit::linearFoot, written)));
}

std::vector<FigureRow> buyRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const BuyLine& line : figures.buy.sticks)
        rows.push_back(stickRow(line, figures, prices));
    for (const RackLine& line : figures.buy.rack)
        rows.push_back(rackRow(line, prices));
    for (const PartLine& line : figures.buy.parts)
        rows.push_back(partRow(line));
    if (!rows.empty()) {
        rows.push_back({{wordCell("total"), emptyCell(), emptyCell(), emptyCell(), emptyCell(),
                            moneyCell(figures.buy.total())},
            QObject::tr("Sticks %1 and parts %2, before tax.")
                .arg(text(formatMoney(figures.buy.sticksCost)),
                    text(formatMoney(figures.buy.partsCost))),
            true});
    }
    return rows;
}

std::vector<FigureRow> patternRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const StickPlan& plan : figures.sticks) {
        for (const CutPattern& pattern : plan.patterns)
            rows.push_back(patternRow(plan, pattern, prices));
    }
    return rows;
}

} // namespace miterbook
