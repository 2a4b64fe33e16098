// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/price_book.h"

#include "book/stick_prices.h"

#include <algorithm>

namespace miterbook {

PriceBook::PriceBook() = default;
PriceBook::PriceBook(const PriceBook&) = default;
PriceBook::PriceBook(PriceBook&&) noexcept = default;
PriceBook& PriceBook::operator=(const PriceBook&) = default;
PriceBook& PriceBook::operator=(PriceBook&&) noexcept = default;
PriceBook::~PriceBook() = default;

namespace {

template <class Row>
const Row& onlyRow(const Table<Row>& table) {
    static const Row none;
    return table.empty() ? none : table.begin()->second;
}

template <class Row, class Match>
const Row* firstWhere(const Table<Row>& table, Match match) {
    for (const auto& [id, row] : table) {
        if (match(row))
            return &row;
    }
    return nullptr;
}

template <class Row>
std::vector<Row> ofProfile(const Table<Row>& table, Id<Profile> id) {
    std::vector<Row> rows;
    for (const auto& [rowId, row] : table) {
        if (row.profile == id)
            rows.push_back(row);
    }
    return rows;
}

} // namespace

const Shop& PriceBook::shop() const {
    return onlyRow(of<Shop>());
}

const Practice& PriceBook::practice() const {
    return onlyRow(of<Practice>());
}

const Terms& PriceBook::terms() const {
    return onlyRow(of<Terms>());
}

std::string_view PriceBook::profileName(Id<Profile> id) const {
    const Profile* found = profile(id);
    return found ? std::string_view(found->name) : std::string_view("no profile");
}

std::vector<Stick> PriceBook::sticksOf(Id<Profile> id) const {
    std::vector<Stick> sticks = ofProfile(of<Stick>(), id);
    std::vector<Date> since(sticks.size(), noDate);
    for (const auto& [priceId, price] : of<StickPrice>()) { // once over what may be years of lists
        const auto stick = std::ranges::find(sticks, price.stick, &Stick::id);
        if (stick == sticks.end() || (m_day.ok() && price.from > m_day))
            continue;
        Date& from = since[static_cast<std::size_t>(stick - sticks.begin())];
        if (from <= price.from) {
            stick->price = price.price;
            from = price.from;
        }
    }
    std::ranges::stable_sort(sticks, {}, &Stick::length);
    return sticks;
}

std::vector<Stick> PriceBook::stockedSticks(Id<Profile> id) const {
    std::vector<Stick> sticks = sticksOf(id);
    std::erase_if(sticks, [](const Stick& stick) { return !stick.stocked; });
    return sticks;
}

Money PriceBook::priceOf(const Stick& stick) const {
    return stickPriceOn(*this, stick, m_day);
}

std::vector<Burden> PriceBook::burdenInForce() const {
    const auto begun = [&](const Burden& item) { return !m_day.ok() || item.from <= m_day; };
    std::vector<Burden> items;
    for (const auto& [id, item] : of<Burden>()) {
        const bool followed = std::ranges::any_of(of<Burden>(), [&](const auto& entry) {
            const Burden& other = entry.second;
            return other.name == item.name && begun(other) && item.from < other.from;
        });
        if (begun(item) && !followed)
            items.push_back(item);
    }
    return items;
}

std::vector<Offcut> PriceBook::offcuts(Id<Profile> id) const {
    return ofProfile(of<Offcut>(), id);
}

const LabourRate* PriceBook::rate(Task task) const {
    return firstWhere(of<LabourRate>(), [&](const LabourRate& r) { return r.task == task; });
}

const PiecePrice* PriceBook::piecePrice(Task task) const {
    return firstWhere(of<PiecePrice>(), [&](const PiecePrice& p) { return p.task == task; });
}

const Part* PriceBook::part(PartUse use) const {
    return firstWhere(of<Part>(), [&](const Part& p) { return p.use == use; });
}

double PriceBook::factor(Conditions conditions) const {
    double product = 1.0;
    for (const auto& [id, row] : of<Factor>()) {
        if (conditions.has(row.condition))
            product *= row.percent.fraction();
    }
    return product;
}

Money PriceBook::crewRate() const {
    Money wages;
    std::int64_t people = 0;
    for (const auto& [id, member] : of<CrewMember>()) {
        if (member.active) {
            wages += member.wage;
            ++people;
        }
    }
    if (people == 0)
        return {};
    Percent ofWages = Percent::hundred();
    Money perYear;
    for (const Burden& item : burdenInForce()) {
        ofWages = ofWages + item.ofWages;
        perYear += item.perYear;
    }
    const std::int64_t hours = std::max(terms().hoursPerYear, 1);
    const Wide perHour = Wide(wages.cents()) * ofWages.basisPoints() * hours
        + Wide(perYear.cents()) * 10'000 * people;
    return Money::cents(roundedQuotient(perHour, Wide(10'000) * people * hours));
}

} // namespace miterbook
