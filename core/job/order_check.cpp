// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/order_check.h"

#include "basics/number_text.h"
#include "job/bills.h"
#include "job/sent_bids.h"

#include <algorithm>

namespace miterbook {

namespace {

/// One option put in or taken out of what the house has.
struct Turn {
    const PlanPrices::Option* option = nullptr;
    bool isChosen = false; ///< the house has it: turning leaves it out
};

/// Looks for what makes up the difference.
class OrderExplainer {
public:
    OrderExplainer(const Book& book, const PlanPrices& prices, const House& house)
        : m_book(book)
        , m_prices(prices)
        , m_house(house)
        , m_symbol(book.prices.shop().currency) {
        for (const PlanPrices::Option& option : prices.options)
            m_turns.push_back({&option, std::ranges::count(house.options, option.option) > 0});
    }

    std::vector<std::string> explain(Money sheet, Money ordered) {
        const std::size_t column = columnOf(m_house.elevation);
        tryTurns(column, ordered - sheet, {});
        for (std::size_t other = 0; other < m_prices.columns.size(); ++other) {
            if (other != column)
                tryElevation(other, ordered);
        }
        tryBids(ordered);
        tryExtras(ordered - sheet);
        if (m_found.empty()) {
            m_found.push_back("No option, elevation, sent bid or extra explains the difference of "
                + formatMoney(ordered - sheet, m_symbol) + ": ask the builder.");
        }
        return std::move(m_found);
    }

private:
    std::size_t columnOf(Id<Variant> elevation) const {
        return static_cast<std::size_t>(
            std::ranges::find(m_prices.columns, elevation, &PlanPrices::Column::elevation)
            - m_prices.columns.begin());
    }

    Money turned(const Turn& turn, std::size_t column) const {
        const Money change = turn.option->changes[column];
        return turn.isChosen ? -change : change;
    }

    std::string said(const Turn& turn, std::size_t column) const {
        return (turn.isChosen ? "leaves out \"" : "has \"") + turn.option->name
            + (turn.isChosen ? "\"" : "\" besides") + " ("
            + formatMoney(turn.option->changes[column], m_symbol) + ")";
    }

    /// Up to three options turned, the fewest first; turns that change nothing explain nothing.
    void tryTurns(std::size_t column, Money wanted, const std::string& before) {
        for (std::size_t count = 1; count <= 3; ++count) {
            const std::size_t found = m_found.size();
            turnMore(column, wanted, before, 0, count);
            if (m_found.size() > found)
                return;
        }
    }

    void turnMore(std::size_t column, Money wanted, const std::string& words, std::size_t from,
        std::size_t count) {
        if (count == 0) {
            if (wanted == Money() && m_found.size() < most)
                m_found.push_back("The order " + words + ".");
            return;
        }
        for (std::size_t i = from; i < m_turns.size(); ++i) {
            const Money change = turned(m_turns[i], column);
            if (change == Money())
                continue;
            const std::string more = words + (words.empty() ? "" : " and ")
                + said(m_turns[i], column);
            turnMore(column, wanted - change, more, i + 1, count - 1);
        }
    }

    void tryElevation(std::size_t column, Money ordered) {
        const PlanPrices::Column& other = m_prices.columns[column];
        Money price = other.price;
        for (const Turn& turn : m_turns) {
            if (turn.isChosen)
                price += turn.option->changes[column];
        }
        const std::string name = other.elevation ? "is for elevation " + other.name
                                                 : std::string("is for the plan as drawn");
        if (price == ordered)
            m_found.push_back("The order " + name + ".");
        else
            tryTurns(column, ordered - price, name);
    }

    void tryBids(Money ordered) {
        for (const SentBid& bid : sentBidsOf(m_book, m_house.work)) {
            if (bid.amount == ordered) {
                m_found.push_back("The order is what bid " + bidName(bid) + " of "
                    + formatDate(bid.date, m_book.prices.shop().monthFirst) + " says.");
            }
        }
    }

    void tryExtras(Money difference) {
        Money agreed;
        for (const Extra& extra : extrasOf(m_book, m_house.id)) {
            if (isAgreed(extra))
                agreed += extra.price;
        }
        if (agreed != Money() && agreed == difference) {
            m_found.push_back("The order takes in the extras agreed on the house ("
                + formatMoney(agreed, m_symbol) + ").");
        }
    }

    static constexpr std::size_t most = 5; // more would not be read

    const Book& m_book;
    const PlanPrices& m_prices;
    const House& m_house;
    const std::string& m_symbol;
    std::vector<Turn> m_turns;
    std::vector<std::string> m_found;
};

std::vector<OrderCheck::Part> partsOf(const PlanPrices& prices, const House& house) {
    const auto column = std::ranges::find(
        prices.columns, house.elevation, &PlanPrices::Column::elevation);
    const auto at = static_cast<std::size_t>(column - prices.columns.begin());
    std::vector<OrderCheck::Part> parts{
        {column->elevation ? "Plan price, elevation " + column->name : std::string("Plan price"),
            column->price}};
    for (const PlanPrices::Option& option : prices.options) {
        if (std::ranges::count(house.options, option.option) > 0)
            parts.push_back({option.name, option.changes[at]});
    }
    return parts;
}

} // namespace

Result<OrderCheck> checkOrder(
    const Book& book, const PlanPrices& prices, const House& house, Money ordered) {
    const auto sheet = lotPrice(prices, {house.elevation, house.options});
    if (!sheet) {
        return Error{Fault::notFound,
            "The price sheet has no price for " + house.name
                + ": its elevation or an option is no longer in the plan."};
    }
    OrderCheck check{partsOf(prices, house), *sheet, ordered, {}};
    if (ordered != *sheet)
        check.explanations = OrderExplainer(book, prices, house).explain(*sheet, ordered);
    return check;
}

} // namespace miterbook
