// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/bid_rows.h"

#include "bid/explain.h"
#include "book/said_words.h"
#include "figures/figure_cells.h"

namespace miterbook {

namespace {

FigureRow workRow(const WorkTotal& total, std::string_view name) {
    FigureRow row;
    row.cells = {wordCell(name), hoursCell(total.hours), moneyCell(total.labour),
        moneyCell(total.material), moneyCell(total.consumables), moneyCell(total.overhead),
        total.contingency == Money() ? emptyCell() : moneyCell(total.contingency),
        total.allowances == Money() ? emptyCell() : moneyCell(total.allowances),
        moneyCell(total.cost()), moneyCell(total.profit), moneyCell(total.price)};
    return row;
}

FigureCell piecePriceCell(const EstimateLine& line) {
    return line.piecePrice ? moneyCell(*line.piecePrice) : emptyCell();
}

FigureRow lineRow(const EstimateLine& line, const JobFigures& figures, const PriceBook& prices) {
    const LengthUnit written = prices.shop().unit;
    const Unit unit = unitOf(line.task);
    const MinutesPerUnit minutes = minutesSaid(line.minutes, unit, written);
    FigureRow row;
    row.cells = {wordCell(word(line.work)), wordCell(said(line.task, written)),
        wordCell(said(line.conditions, written)),
        quantityCell(amountSaid(line.quantity, unit, written)), wordCell(unitText(unit, written)),
        {text(formatMinutesPerUnit(minutes)), minutes.toDouble()},
        {QString::number(line.factor, 'f', 3), line.factor}, hoursCell(line.hours),
        moneyCell(line.labour), piecePriceCell(line)};
    row.from = lines(explainLine(line, figures.takeoff, prices, figures.estimate.crewRate));
    return row;
}

} // namespace

std::vector<FigureRow> workRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const WorkTotal& total : figures.estimate.works) {
        rows.push_back(workRow(total, word(total.work)));
        rows.back().from = lines(
            explainMaterial(total, figures.takeoff, figures.sticks, prices, figures.setup));
    }
    rows.push_back(workRow(figures.estimate.total, "whole house"));
    rows.back().strong = true;
    rows.back().from = lines(explainPrice(figures.estimate, figures.setup, prices.shop().currency))
        + QLatin1Char('\n') + lines(explainCrewRate(prices));
    return rows;
}

std::vector<FigureRow> lineRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const EstimateLine& line : figures.estimate.lines)
        rows.push_back(lineRow(line, figures, prices));
    return rows;
}

} // namespace miterbook
