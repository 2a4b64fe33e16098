// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/sent_rows.h"

#include "bid/profit.h"
#include "figures/figure_cells.h"

#include <QObject>

#include <algorithm>

namespace miterbook {

namespace {

FigureCell dateCell(Date date) {
    return wordCell(isoDate(date));
}

QString signedMoney(Money change) {
    const QString plain = text(formatMoney(change));
    return change > Money() ? u'+' + plain : plain;
}

FigureCell changeCell(std::optional<Money> change) {
    if (!change || *change == Money())
        return emptyCell();
    return {signedMoney(*change), static_cast<double>(change->cents())};
}

const SentBid* revisionBefore(const std::vector<SentBid>& bids, const SentBid& bid) {
    const auto it = std::ranges::find_if(bids, [&](const SentBid& each) {
        return each.number == bid.number && each.revision == bid.revision - 1;
    });
    return it == bids.end() ? nullptr : &*it;
}

QString sentFrom(const SentBid& bid) {
    const QString money
        = QObject::tr("Reckoned on the day it was sent: cost %1, profit %2 = %3 % margin "
                      "on price, %4 hours.")
              .arg(text(formatMoney(bid.cost)), text(formatMoney(bid.amount - bid.cost)),
                  text(formatPercent(marginOf(bid.cost, bid.amount))),
                  text(formatHours(bid.hours)));
    return bid.note.empty() ? money : money + u'\n' + text(bid.note);
}

} // namespace

QStringList sentTitles() {
    return {QObject::tr("Number"), QObject::tr("Revision"), QObject::tr("Sent"),
        QObject::tr("Valid until"), QObject::tr("Price"), QObject::tr("Against the one before"),
        QObject::tr("Stands at"), QObject::tr("Answered"), QObject::tr("Note")};
}

std::vector<FigureRow> sentRows(const Book& book, const std::vector<SentBid>& bids) {
    std::vector<FigureRow> rows;
    for (const SentBid& bid : bids) {
        const SentBid* before = revisionBefore(bids, bid);
        FigureRow row;
        row.cells = {countCell(bid.number), countCell(bid.revision), dateCell(bid.date),
            dateCell(bid.validUntil), moneyCell(bid.amount),
            changeCell(before ? std::optional(bid.amount - before->amount) : std::nullopt),
            wordCell(word(standingOf(book, bid))), dateCell(bid.answered), wordCell(bid.note)};
        row.from = sentFrom(bid);
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList differenceTitles() {
    return {QObject::tr("Part"), QObject::tr("Line"), QObject::tr("Before"), QObject::tr("After"),
        QObject::tr("Difference")};
}

std::vector<FigureRow> differenceRows(const std::vector<PaperDifference>& differences) {
    std::vector<FigureRow> rows;
    for (const PaperDifference& each : differences) {
        FigureRow row;
        row.cells = {wordCell(each.part), wordCell(each.line), wordCell(each.before),
            wordCell(each.after), changeCell(each.change)};
        row.strong = each.total;
        row.from = !each.changed() ? QObject::tr("The same on both.")
            : each.before.empty()  ? QObject::tr("New: %1").arg(text(each.after))
            : each.after.empty()
            ? QObject::tr("No longer there: %1").arg(text(each.before))
            : QObject::tr("Before: %1\nAfter: %2").arg(text(each.before), text(each.after));
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList winTitles() {
    return {QObject::tr("Builder"), QObject::tr("Won"), QObject::tr("Lost"), QObject::tr("Open"),
        QObject::tr("Of those answered"), QObject::tr("Won for"), QObject::tr("Lost at"),
        QObject::tr("Open at")};
}

static FigureRow winRow(const QString& name, const BuilderBids& bids) {
    FigureRow row;
    const auto rate = bids.winRate();
    row.cells = {{name, std::nullopt}, countCell(bids.won), countCell(bids.lost),
        countCell(bids.open), rate ? percentCell(*rate) : emptyCell(), moneyCell(bids.wonAmount),
        moneyCell(bids.lostAmount), moneyCell(bids.openAmount)};
    row.from = QObject::tr(
        "Each bid counts once, by its last revision; an open one counts neither way.");
    return row;
}

std::vector<FigureRow> winRows(const Book& book) {
    std::vector<FigureRow> rows;
    BuilderBids all;
    for (const BuilderBids& bids : bidsByBuilder(book)) {
        const Builder* builder = book.prices.of<Builder>().find(bids.builder);
        rows.push_back(winRow(builder ? text(builder->name) : QObject::tr("no builder"), bids));
        all.won += bids.won;
        all.lost += bids.lost;
        all.open += bids.open;
        all.wonAmount += bids.wonAmount;
        all.lostAmount += bids.lostAmount;
        all.openAmount += bids.openAmount;
    }
    if (rows.empty())
        return rows;
    rows.push_back(winRow(QObject::tr("all builders"), all));
    rows.back().strong = true;
    return rows;
}

} // namespace miterbook
