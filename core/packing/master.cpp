// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/master.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

namespace {

std::size_t rowsOf(const Instance& instance) {
    std::size_t rows = instance.kinds() + instance.bins().size();
    for (const Bin& bin : instance.bins())
        rows += bin.price > 0 ? 1 : 0;
    return rows;
}

} // namespace

Master::Master(const Instance& instance)
    : m_instance(instance)
    , m_pricer(instance)
    , m_simplex(rowsOf(instance)) {
    addSlacks();
    for (std::size_t bin = 0; bin < instance.bins().size(); ++bin)
        if (m_lowerRow[bin] >= 0)
            add({bin, {}, instance.bins()[bin].price});
}

void Master::addSlacks() {
    std::int64_t dearest = 1;
    for (const Bin& bin : m_instance.bins())
        dearest = std::max(dearest, bin.price);
    m_simplex.setTolerance(1e-9 * static_cast<double>(dearest));
    m_penalty = 10 * static_cast<double>(dearest);
    m_highestPenalty = 1000 * m_penalty;
    std::vector<int>& basis = m_firstBasis;
    int row = 0;
    for (; row < static_cast<int>(m_instance.kinds()); ++row) {
        const Simplex::Entry plus[] = {{row, 1.0}};
        const Simplex::Entry minus[] = {{row, -1.0}};
        m_missing.push_back(m_simplex.addColumn(plus, m_penalty));
        m_simplex.addColumn(minus, 0);
        basis.push_back(m_missing.back());
    }
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin, ++row) {
        const Simplex::Entry plus[] = {{row, 1.0}};
        basis.push_back(m_simplex.addColumn(plus, 0));
    }
    for (const Bin& bin : m_instance.bins()) {
        m_lowerRow.push_back(bin.price > 0 ? row : -1);
        if (bin.price <= 0)
            continue;
        const Simplex::Entry minus[] = {{row, -1.0}};
        basis.push_back(m_simplex.addColumn(minus, 0));
        ++row;
    }
    m_columnOf.assign(m_simplex.columns(), -1);
    m_simplex.start(basis);
}

std::size_t Master::hash(const Column& column) {
    std::size_t sum = column.bin + 0x9e3779b97f4a7c15U;
    for (const auto& [kind, count] : column.cuts) {
        sum ^= static_cast<std::size_t>(kind) * 131071U + static_cast<std::size_t>(count);
        sum *= 0x100000001b3U;
        sum ^= sum >> 29;
    }
    return sum;
}

int Master::find(const Column& column) const {
    const auto [from, to] = m_known.equal_range(hash(column));
    for (auto it = from; it != to; ++it)
        if (m_columns[static_cast<std::size_t>(it->second)] == column)
            return it->second;
    return -1;
}

bool Master::insert(const Column& column) {
    if (find(column) >= 0)
        return false;
    m_known.emplace(hash(column), static_cast<int>(m_columns.size()));
    std::vector<Simplex::Entry> entries;
    for (const auto& [kind, count] : column.cuts)
        entries.emplace_back(kind, static_cast<double>(count));
    const auto kinds = static_cast<int>(m_instance.kinds());
    entries.emplace_back(kinds + static_cast<int>(column.bin), 1.0);
    if (m_lowerRow[column.bin] >= 0)
        entries.emplace_back(m_lowerRow[column.bin], 1.0);
    m_ids.push_back(m_simplex.addColumn(entries, static_cast<double>(column.cost)));
    m_columnOf.push_back(static_cast<int>(m_columns.size()));
    m_columns.push_back(column);
    return true;
}

void Master::add(const Column& column) {
    insert(column);
}

void Master::ask(
    const Counts& demand, const StickLimits& limits, const std::vector<Column>& forbidden) {
    m_demand = demand;
    m_limits = limits;
    m_pricer.forbid(forbidden);
    allow(forbidden);
}

void Master::forget(const Duals& duals, double gap) {
    std::vector<char> kept(m_simplex.columns(), true);
    std::vector<Column> columns;
    m_known.clear();
    for (std::size_t c = 0; c < m_columns.size(); ++c) {
        const Column& column = m_columns[c];
        double surplus = static_cast<double>(column.cost) - duals.stick[column.bin];
        for (const auto& [kind, count] : column.cuts)
            surplus -= duals.piece[static_cast<std::size_t>(kind)] * static_cast<double>(count);
        if (surplus > gap && !column.cuts.empty() && !m_simplex.basic(m_ids[c])) {
            kept[static_cast<std::size_t>(m_ids[c])] = false;
            continue;
        }
        m_known.emplace(hash(column), static_cast<int>(columns.size()));
        columns.push_back(column);
    }
    m_simplex.keepOnly(kept);
    const std::size_t slacks = m_simplex.columns() - columns.size();
    m_columnOf.assign(slacks, -1);
    m_ids.clear();
    for (std::size_t c = 0; c < columns.size(); ++c) {
        m_ids.push_back(static_cast<int>(slacks + c)); // slacks come first, the rest in order
        m_columnOf.push_back(static_cast<int>(c));
    }
    m_columns = std::move(columns);
}

// Columns that cut more than is wanted may not enter; those in the basis are priced out after
// the dual simplex has run.
void Master::allow(const std::vector<Column>& forbidden) {
    for (std::size_t c = 0; c < m_columns.size(); ++c) {
        const Column& column = m_columns[c];
        bool proper = m_limits.upper[column.bin] > 0;
        for (const auto& [kind, count] : column.cuts)
            proper = proper && count <= m_demand[static_cast<std::size_t>(kind)];
        m_simplex.setBlocked(m_ids[c], !proper);
        m_simplex.setCost(m_ids[c], static_cast<double>(column.cost));
    }
    for (const Column& column : forbidden)
        if (const int c = find(column); c >= 0)
            m_simplex.setBlocked(m_ids[static_cast<std::size_t>(c)], true);
}

bool Master::missesPieces() const {
    return std::any_of(m_missing.begin(), m_missing.end(),
        [&](int column) { return m_simplex.value(column) > 1e-6; });
}

std::vector<std::pair<int, double>> Master::solution() const {
    std::vector<std::pair<int, double>> uses;
    for (const int id : m_simplex.basis()) {
        const int column = m_columnOf[static_cast<std::size_t>(id)];
        if (column >= 0 && m_simplex.value(id) > 1e-9
            && !m_columns[static_cast<std::size_t>(column)].cuts.empty())
            uses.emplace_back(column, m_simplex.value(id));
    }
    std::sort(uses.begin(), uses.end(), [](const auto& a, const auto& b) {
        return a.second != b.second ? a.second > b.second : a.first < b.first;
    });
    return uses;
}

std::vector<double> Master::sticks() const {
    std::vector<double> sums(m_instance.bins().size(), 0);
    for (const int id : m_simplex.basis())
        if (const int column = m_columnOf[static_cast<std::size_t>(id)]; column >= 0)
            sums[m_columns[static_cast<std::size_t>(column)].bin] += m_simplex.value(id);
    return sums;
}

} // namespace miterbook::packing
