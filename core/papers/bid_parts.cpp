// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bid_parts.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "basics/quote.h"
#include "book/said_words.h"
#include "papers/cells.h"
#include "papers/exact_numbers.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

Cell unitPriceCell(UnitPrice price, const std::string& symbol) {
    return {symbol + formatUnitPrice(price), exactDecimal(price.tenThousandths(), 4, 2)};
}

PaperTable twoColumns(std::string title, std::string what, std::string amount) {
    PaperTable table;
    table.title = std::move(title);
    table.columns = {{std::move(what), PaperColumn::Align::left, 60},
        {std::move(amount), PaperColumn::Align::right, 18}};
    return table;
}

} // namespace

Cell alternateCell(Money change, std::string_view symbol) {
    Cell cell = moneyCell(change, symbol);
    if (change > Money())
        cell.text.insert(0, "+");
    else if (change == Money())
        cell.text = "no change";
    return cell;
}

PaperTable alternatesTable(const std::vector<Alternate>& alternates, const PriceBook& prices) {
    PaperTable table = twoColumns(
        std::string(alternatesTitle), "If chosen before the work begins", "To the price");
    for (const Alternate& each : alternates) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(each.name)), alternateCell(each.change, prices.shop().currency)}});
    }
    return table;
}

PaperTable allowancesTable(const BidSetup& setup, const PriceBook& prices) {
    PaperTable table = twoColumns(
        "Allowances, in the price", "For what is still to be chosen", "Allowed");
    for (const Allowance& each : setup.allowances) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(each.what)), moneyCell(each.amount, prices.shop().currency)}});
    }
    return table;
}

PaperTable unitPricesTable(const PriceBook& prices) {
    PaperTable table = twoColumns("Prices for extras", "One more", "Each");
    table.columns.insert(table.columns.begin() + 1, {"Unit", PaperColumn::Align::left, 12});
    const std::string& symbol = prices.shop().currency;
    const LengthUnit written = prices.shop().unit;
    for (const auto& [id, piece] : prices.of<PiecePrice>()) {
        if (!piece.quoted)
            continue;
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(capitalised(said(piece.task, written))),
                Cell::of(unitText(unitOf(piece.task), written)),
                unitPriceCell(priceSaid(piece.price, unitOf(piece.task), written), symbol)}});
    }
    if (prices.terms().hourlyRate > Money()) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of("Other work, by the hour"), Cell::of("hour"),
                moneyCell(prices.terms().hourlyRate, symbol)}});
    }
    return table;
}

} // namespace miterbook
