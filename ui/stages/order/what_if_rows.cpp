// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/what_if_rows.h"

#include "figures/figure_cells.h"
#include "stages/order/order_rows.h"

#include <algorithm>

namespace miterbook {

namespace {

FigureRow moneyRow(const QString& what, Money now, Money then, const QString& from) {
    return {{{what, std::nullopt}, moneyCell(now), moneyCell(then), moneyCell(then - now)}, from,
        false};
}

FigureRow boughtRow(Length now, Length then, LengthUnit written, const QString& from) {
    const QString what = QObject::tr("%1 bought").arg(text(unitText(Unit::linearFoot, written)));
    return {{{what, std::nullopt}, runCell(now, written), runCell(then, written),
                runCell(then - now, written)},
        from, false};
}

FigureRow countRow(const QString& what, int now, int then, const QString& from) {
    return {{{what, std::nullopt}, countCell(now), countCell(then), countCell(then - now)}, from,
        false};
}

Length neededBy(const std::vector<StickPlan>& plans) {
    Length needed;
    for (const StickPlan& plan : plans)
        needed += plan.needed;
    return needed;
}

} // namespace

std::vector<FigureRow> whatIfRows(const std::vector<StickPlan>& now,
    const std::vector<StickPlan>& then, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const StickPlan& plan : now) {
        const auto other = std::ranges::find(then, plan.profile, &StickPlan::profile);
        if (other != then.end())
            rows.push_back(moneyRow(text(prices.profileName(plan.profile)), plan.cost, other->cost,
                QObject::tr("As it is %1; what if: %2.")
                    .arg(boundText({plan}, prices), boundText({*other}, prices))));
    }
    const OrderSums a = orderSums(now);
    const OrderSums b = orderSums(then);
    rows.push_back(moneyRow(QObject::tr("all sticks"), a.cost, b.cost,
        QObject::tr("As it is %1; what if: %2. Spare sticks and parts are not counted.")
            .arg(boundText(now, prices), boundText(then, prices))));
    rows.back().strong = true;
    const LengthUnit written = prices.shop().unit;
    rows.push_back(boughtRow(a.bought, b.bought, written,
        QObject::tr("The pieces themselves come to %1.").arg(runText(neededBy(now), written))));
    rows.push_back(countRow(QObject::tr("sticks bought"), a.sticks, b.sticks, {}));
    rows.push_back(countRow(QObject::tr("offcuts from the rack"), a.fromRack, b.fromRack, {}));
    rows.push_back(countRow(QObject::tr("ways of cutting a stick"), a.patterns, b.patterns,
        QObject::tr("The fewer, the fewer stop settings.")));
    return rows;
}

QString whatIfSentence(const WhatIf& whatIf, const std::vector<StickPlan>& now,
    const std::vector<StickPlan>& then, const PriceBook& prices) {
    const std::string symbol = prices.shop().currency;
    const Money a = orderSums(now).cost;
    const Money b = orderSums(then).cost;
    const auto money = [&](Money amount) { return text(formatMoney(amount, symbol)); };
    if (a == b)
        return QObject::tr("The sticks would come to %1 all the same.").arg(money(b));
    if (b > a) {
        return QObject::tr("The sticks would come to %1 instead of %2: %3 more.")
            .arg(money(b), money(a), money(b - a));
    }
    const QString less = QObject::tr("The sticks would come to %1 instead of %2: %3 less.")
                             .arg(money(b), money(a), money(a - b));
    WhatIf fewerLengthsOnly;
    fewerLengthsOnly.outOfStock = whatIf.outOfStock;
    return whatIf == fewerLengthsOnly
        ? less + u' ' + QObject::tr("Long runs are spliced elsewhere then.")
        : less;
}

} // namespace miterbook
