// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/risk_rows.h"

#include "figures/figure_cells.h"

#include <QObject>

#include <cmath>

namespace miterbook {

namespace {

/// 0.714 -> "71".
QString ofHundred(double chance) {
    return QString::number(std::lround(chance * 100));
}

QString spreadText(double spread) {
    return QString::number(std::lround(spread * 100));
}

QString hoursText(Hours hours) {
    return QString::number(std::lround(static_cast<double>(hours.minutes()) / 60));
}

FigureCell shareCell(double share) {
    return {ofHundred(share) + QStringLiteral(" %"), share};
}

/// Sorted by how far it reaches.
FigureCell rangeCell(const WorkRisk& work) {
    return {QObject::tr("%1 to %2").arg(text(formatHours(work.low)), text(formatHours(work.high))),
        static_cast<double>((work.high - work.low).minutes())};
}

QString sourceText(const RiskOutlook& outlook) {
    if (outlook.houses() == 0) {
        return QObject::tr(
            "No house is finished yet. Until then this goes by a starter's spread: %1 % "
            "for each piece of work and %2 % for a house as a whole (common practice).")
            .arg(spreadText(RiskBelief::starterWorkSpread),
                spreadText(RiskBelief::starterHouseSpread));
    }
    return outlook.houses() == 1 ? QObject::tr("From one finished house and the starter's spread.")
                                 : QObject::tr("From %1 finished houses.").arg(outlook.houses());
}

} // namespace

QString riskSentences(const RiskOutlook& outlook, const std::string& currency) {
    if (!outlook.any())
        return QObject::tr("There are no hours in this bid yet.");
    const QString chance
        = QObject::tr("Of 100 houses like this, %1 make money at this price and %2 make the profit "
                      "that was bid or more.")
              .arg(ofHundred(outlook.chanceOfProfit()), ofHundred(outlook.chanceOfTarget()));
    const QString hours = QObject::tr(
        "Expect %1 hours; 90 of 100 take from %2 to %3. At %4 hours the price is used up.")
                              .arg(hoursText(outlook.expected()), hoursText(outlook.hoursAt(0.05)),
                                  hoursText(outlook.hoursAt(0.95)),
                                  QString::number(std::lround(outlook.breakEvenHours())));
    const QString price = QObject::tr("A price of %1 loses nothing in 90 of 100.")
                              .arg(text(formatMoney(outlook.priceFor(0.9, Money()), currency)));
    return sourceText(outlook) + u'\n' + chance + u'\n' + hours + u' ' + price;
}

QStringList certaintyTitles() {
    return {QObject::tr("Of 100"), QObject::tr("Hours"), QObject::tr("Cost"),
        QObject::tr("With profit")};
}

std::vector<FigureRow> certaintyRows(const RiskOutlook& outlook, Money profit) {
    std::vector<FigureRow> rows;
    if (!outlook.any())
        return rows;
    for (const double certainty : {0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95}) {
        FigureRow row;
        row.cells = {countCell(std::lround(certainty * 100)), hoursCell(outlook.hoursAt(certainty)),
            moneyCell(outlook.costAt(certainty)), moneyCell(outlook.priceFor(certainty, profit))};
        row.from = QObject::tr(
            "So many of 100 houses like this stay within these hours and this cost: "
            "labour is the hours at the crew rate, all else as bid. With profit: the "
            "price that leaves the profit bid as well.");
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList workRiskTitles() {
    return {QObject::tr("Piece of work"), QObject::tr("Bid"), QObject::tr("Expected"),
        QObject::tr("90 of 100"), QObject::tr("Of the risk"), QObject::tr("Houses")};
}

std::vector<FigureRow> workRiskRows(const RiskOutlook& outlook) {
    std::vector<FigureRow> rows;
    for (const WorkRisk& work : outlook.works()) {
        FigureRow row;
        row.cells = {wordCell(word(work.work)), hoursCell(work.bid), hoursCell(work.expected),
            rangeCell(work), shareCell(work.share), countCell(work.houses)};
        row.from = work.houses == 0
            ? QObject::tr("No finished house says anything of this work: the starter's spread.")
            : QObject::tr("What finished houses took against their bid, drawn towards the bid the "
                          "more the fewer they are.");
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace miterbook
