// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/plan_ties.h"

namespace miterbook {

namespace {

template <class Row>
std::string nameIn(const Row& row) {
    if constexpr (requires { row.mark; }) {
        if (!row.mark.empty())
            return row.mark;
    }
    if constexpr (requires { row.name; })
        return row.name;
    else
        return {};
}

/// Rows by name; null where several share it.
template <class Row>
std::map<std::string, const Row*> byName(const Table<Row>& rows) {
    std::map<std::string, const Row*> names;
    for (const auto& [id, row] : rows) {
        const auto [it, fresh] = names.try_emplace(nameIn(row), &row);
        if (!fresh)
            it->second = nullptr;
    }
    return names;
}

} // namespace

PlanTies::PlanTies(const Book& book, const House& house)
    : m_plan(house.work)
    , m_whole(wholePlan(
          *book.plan(house.plan), book.sheet(house.plan), {house.elevation, house.options})) {
    const SheetRows& own = book.sheet(house.work);
    for (const auto& [id, tie] : own.of<PlanTie>())
        note(tie);
    if (!m_ties.empty())
        return;
    put(std::string(Describe<Plan>::table), house.work.value(), house.plan.value(), 0);
    forEachList([&]<class Row>(const std::vector<Row>& rows) { guess(rows, own.of<Row>()); });
}

/// Rows without a name, or with one that others have too, cannot be told apart: they are let be.
template <class Row>
void PlanTies::guess(const std::vector<Row>& planned, const Table<Row>& own) {
    const auto names = byName(own);
    for (const Row& row : planned) {
        const auto it = names.find(nameIn(row));
        const std::string kind(Describe<Row>::table);
        if (it != names.end() && it->second && !nameIn(row).empty())
            put(kind, it->second->id.value(), row.id.value(), 0);
        else if (it != names.end() || nameIn(row).empty())
            put(kind, 0, row.id.value(), stampOf(row));
    }
}

const PlanTie* PlanTies::find(const Places& places, std::string_view kind, std::int64_t id) const {
    const auto it = places.find(Key(kind, id));
    return it == places.end() || id == 0 ? nullptr : &m_ties[it->second];
}

void PlanTies::note(const PlanTie& tie) {
    if (tie.source != 0)
        m_bySource[Key(tie.kind, tie.source)] = m_ties.size();
    if (tie.own != 0)
        m_byOwn[Key(tie.kind, tie.own)] = m_ties.size();
    m_ties.push_back(tie);
}

void PlanTies::put(std::string kind, std::int64_t own, std::int64_t source, std::int64_t stamp) {
    const auto it = m_bySource.find(Key(kind, source));
    if (it == m_bySource.end()) {
        note({Id<PlanTie>(), m_plan, std::move(kind), own, source, stamp});
        return;
    }
    m_ties[it->second].own = own;
    m_ties[it->second].stamp = stamp;
    if (own != 0)
        m_byOwn[Key(kind, own)] = it->second;
}

void PlanTies::loosen(const std::string& kind, std::int64_t own, bool gone) {
    const auto it = m_byOwn.find(Key(kind, own));
    if (it == m_byOwn.end())
        return;
    PlanTie& tie = m_ties[it->second];
    m_bySource.erase(Key(kind, tie.source));
    tie.source = 0;
    if (gone)
        tie.own = 0;
}

} // namespace miterbook
