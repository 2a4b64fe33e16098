// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/price_book.h"

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

std::vector<Stick> PriceBook::stockedSticks(Id<Profile> id) const {
    std::vector<Stick> sticks = ofProfile(of<Stick>(), id);
    std::erase_if(sticks, [](const Stick& stick) { return !stick.stocked; });
    std::ranges::stable_sort(sticks, {}, &Stick::length);
    return sticks;
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
    for (const auto& [id, item] : of<Burden>()) {
        ofWages = ofWages + item.ofWages;
        perYear += item.perYear;
    }
    const std::int64_t hours = std::max(terms().hoursPerYear, 1);
    const Wide perHour = Wide(wages.cents()) * ofWages.basisPoints() * hours
        + Wide(perYear.cents()) * 10'000 * people;
    return Money::cents(roundedQuotient(perHour, Wide(10'000) * people * hours));
}

} // namespace miterbook
