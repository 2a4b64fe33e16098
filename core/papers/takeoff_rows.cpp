// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/takeoff_rows.h"

#include "basics/number_text.h"
#include "book/said_words.h"
#include "papers/plain_text.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Adds up shares and says where each comes from. A lone share needs no number of its own.
class ShareSum {
public:
    void add(const Source& source, Quantity quantity) {
        m_amount += quantity;
        m_names.push_back(oneLine(source.name));
        m_amounts.push_back(formatQuantity(quantity));
    }

    TakeoffRow row(PieceOfWork work, TakeoffRow::Item item, int pieces) const {
        std::string from = m_names.size() == 1 ? m_names.front() : std::string();
        for (std::size_t i = 0; m_names.size() > 1 && i < m_names.size(); ++i)
            from += (i == 0 ? "" : ", ") + m_names[i] + ' ' + m_amounts[i];
        return {work, item, m_amount, pieces, std::move(from)};
    }

private:
    Quantity m_amount;
    std::vector<std::string> m_names;
    std::vector<std::string> m_amounts;
};

template <class Total, class Amount>
ShareSum sumOf(const Total& total, Amount amount) {
    ShareSum sum;
    for (const auto& share : total.shares)
        sum.add(share.source, amount(share));
    return sum;
}

bool inOrder(const TakeoffRow& a, const TakeoffRow& b) {
    return std::tie(a.work, a.item) < std::tie(b.work, b.item);
}

} // namespace

std::vector<TakeoffRow> takeoffRows(const Totals& totals, LengthUnit written) {
    std::vector<TakeoffRow> rows;
    for (const ProfileTotal& total : totals.profiles) {
        const ShareSum sum = sumOf(
            total, [written](const auto& share) { return runSaid(share.running, written); });
        rows.push_back(sum.row(total.work, total.profile, total.pieces));
    }
    for (const TaskTotal& total : totals.tasks) {
        const ShareSum sum = sumOf(total, [&](const auto& share) {
            return amountSaid(share.quantity, unitOf(total.task), written);
        });
        rows.push_back(sum.row(total.work, total.task, 0));
    }
    for (const PartTotal& total : totals.parts) {
        const ShareSum sum = sumOf(
            total, [](const auto& share) { return Quantity::count(share.count); });
        rows.push_back(sum.row(total.work, total.use, 0));
    }
    std::ranges::stable_sort(rows, inOrder);
    return rows;
}

std::vector<TakeoffRow> summedRows(const std::vector<PlaceTotals>& places, LengthUnit written) {
    std::map<std::pair<PieceOfWork, TakeoffRow::Item>, TakeoffRow> sums;
    for (const PlaceTotals& place : places) {
        for (const TakeoffRow& row : takeoffRows(place.totals, written)) {
            TakeoffRow& sum = sums[{row.work, row.item}];
            sum.work = row.work;
            sum.item = row.item;
            sum.amount += row.amount;
            sum.pieces += row.pieces;
        }
    }
    std::vector<TakeoffRow> rows;
    for (auto& [key, row] : sums)
        rows.push_back(std::move(row));
    return rows;
}

std::string itemName(const TakeoffRow::Item& item, const PriceBook& prices) {
    if (const auto* profile = std::get_if<Id<Profile>>(&item))
        return std::string(prices.profileName(*profile));
    if (const auto* task = std::get_if<Task>(&item))
        return std::string(said(*task, prices.shop().unit));
    return std::string(word(std::get<PartUse>(item))) + ", goods";
}

Unit itemUnit(const TakeoffRow::Item& item) {
    if (std::holds_alternative<Id<Profile>>(item))
        return Unit::linearFoot;
    const auto* task = std::get_if<Task>(&item);
    return task ? unitOf(*task) : Unit::each;
}

} // namespace miterbook
