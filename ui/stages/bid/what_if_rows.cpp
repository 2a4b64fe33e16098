// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/what_if_rows.h"

#include "figures/figure_cells.h"
#include "widgets/columns.h"
#include "widgets/profile_column.h"

#include <QObject>

#include <cmath>

namespace miterbook {

namespace {

constexpr Column<Scenario> scenarioTable[] = {
    textColumn<&Scenario::name>(QT_TRANSLATE_NOOP("Column", "Scenario")),
    percentColumn<&Scenario::wages>(QT_TRANSLATE_NOOP("Column", "Wages")),
    percentColumn<&Scenario::material>(QT_TRANSLATE_NOOP("Column", "Material")),
    percentColumn<&Scenario::minutes>(QT_TRANSLATE_NOOP("Column", "All minutes")),
    wordColumn<&Scenario::task>(QT_TRANSLATE_NOOP("Column", "One task")),
    minutesColumn<&Scenario::taskMinutes>(QT_TRANSLATE_NOOP("Column", "Its minutes, 0: as is")),
    profileColumn<&Scenario::insteadOf, NoProfile::unsaid>(
        QT_TRANSLATE_NOOP("Column", "Instead of")),
    profileColumn<&Scenario::profile, NoProfile::unsaid>(
        QT_TRANSLATE_NOOP("Column", "this profile")),
    wordColumn<&Scenario::profitKind>(QT_TRANSLATE_NOOP("Column", "Profit as")),
    percentColumn<&Scenario::profit>(QT_TRANSLATE_NOOP("Column", "Profit")),
    percentColumn<&Scenario::overhead>(QT_TRANSLATE_NOOP("Column", "Overhead")),
};

QString moved(Money change) {
    const QString plain = text(formatMoney(change));
    return change > Money() ? u'+' + plain : plain;
}

FigureCell chanceCell(double chance) {
    return {QString::number(std::lround(chance * 100)), chance};
}

} // namespace

std::span<const Column<Scenario>> scenarioColumns() {
    return scenarioTable;
}

QStringList outcomeTitles() {
    return {QObject::tr("Scenario"), QObject::tr("Price"), QObject::tr("Against the bid"),
        QObject::tr("Cost"), QObject::tr("Profit"), QObject::tr("Margin on price"),
        QObject::tr("Hours"), QObject::tr("Make money, of 100"),
        QObject::tr("Make the profit, of 100"), QObject::tr("Price used up at, hours")};
}

std::vector<FigureRow> outcomeRows(const std::vector<BidOutcome>& outcomes) {
    std::vector<FigureRow> rows;
    for (const BidOutcome& each : outcomes) {
        FigureRow row;
        const Money change = each.price - outcomes.front().price;
        const bool any = each.hours > Hours();
        row.cells = {wordCell(each.name), moneyCell(each.price),
            change == Money() ? emptyCell()
                              : FigureCell{moved(change), static_cast<double>(change.cents())},
            moneyCell(each.cost), moneyCell(each.profit), percentCell(each.margin),
            hoursCell(each.hours), any ? chanceCell(each.chanceOfProfit) : emptyCell(),
            any ? chanceCell(each.chanceOfTarget) : emptyCell(),
            any ? FigureCell{QString::number(each.breakEvenHours, 'f', 1), each.breakEvenHours}
                : emptyCell()};
        row.strong = &each == &outcomes.front();
        row.from = QObject::tr(
            "Price, chance and hours as the whole bid reckons them with what the "
            "scenario changes; sticks as they are cut today where their need stays.");
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace miterbook
