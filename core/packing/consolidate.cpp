// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/consolidate.h"

#include "packing/incumbent.h"

#include <algorithm>
#include <limits>

namespace miterbook::packing {

namespace {

Counts countsOf(const Column& column, std::size_t kinds) {
    Counts counts(kinds, 0);
    for (const auto& [kind, count] : column.cuts)
        counts[static_cast<std::size_t>(kind)] += count;
    return counts;
}

std::int64_t costOf(const std::vector<std::pair<Column, std::int64_t>>& lines) {
    std::int64_t cost = 0;
    for (const auto& [column, times] : lines)
        cost += column.cost * times;
    return cost;
}

} // namespace

Consolidation::Consolidation(const Instance& instance, Packing packing, Budget& budget)
    : m_instance(instance)
    , m_packing(std::move(packing))
    , m_budget(budget) {
}

Packing Consolidation::run() {
    do
        tidy(m_packing);
    while (spareFreeStick() || mergeOnce());
    gatherRemainder();
    tidy(m_packing);
    m_packing.cost = costOf(m_packing.columns);
    return std::move(m_packing);
}

// A free stick is an offcut from the rack: not to be cut up when bought sticks have room anyway.
bool Consolidation::spareFreeStick() {
    for (std::size_t line = 0; line < m_packing.columns.size(); ++line) {
        const auto& [column, times] = m_packing.columns[line];
        if (times != 1 || m_instance.bins()[column.bin].price != 0)
            continue;
        const auto count = static_cast<std::int64_t>(m_packing.columns.size());
        if (!m_budget.spend(1 + count / 10))
            return false;
        Lines lines = m_packing.columns;
        if (!movedAway(line, lines))
            continue;
        m_packing.columns = std::move(lines);
        return true;
    }
    return false;
}

// Every piece finds room on another stick that is cut like no other, and nothing gets dearer.
bool Consolidation::movedAway(std::size_t from, Lines& lines) const {
    const Column going = lines[from].first;
    const std::int64_t before = costOf(lines);
    for (const auto& [kind, count] : going.cuts) {
        const std::int64_t width = m_instance.widths()[static_cast<std::size_t>(kind)];
        std::int64_t left = count;
        for (std::size_t to = 0; to < lines.size() && left > 0; ++to) {
            if (to == from || lines[to].second != 1)
                continue;
            const std::int64_t some = std::min(left, room(lines[to]) / width);
            if (some > 0)
                change(lines[to].first, kind, some);
            left -= some;
        }
        if (left > 0)
            return false;
    }
    lines[from].second = 0;
    return costOf(lines) <= before;
}

bool Consolidation::mergeOnce() {
    for (std::size_t a = 0; a < m_packing.columns.size(); ++a) {
        for (std::size_t b = a + 1; b < m_packing.columns.size(); ++b) {
            if (!m_budget.spend(2 + static_cast<std::int64_t>(m_instance.kinds()) / 300))
                return false;
            if (m_packing.columns[a].second == m_packing.columns[b].second && mergePair(a, b))
                return true;
        }
    }
    return false;
}

// Two patterns used equally often: cut their pieces like a pattern in use and one other, or as
// two sticks alike.
bool Consolidation::mergePair(std::size_t a, std::size_t b) {
    Counts both = countsOf(m_packing.columns[a].first, m_instance.kinds());
    for (const auto& [kind, count] : m_packing.columns[b].first.cuts)
        both[static_cast<std::size_t>(kind)] += count;
    return intoTwins(a, b, both) || intoKnown(a, b, both);
}

bool Consolidation::intoTwins(std::size_t a, std::size_t b, const Counts& both) {
    if (m_packing.columns[a].first.bin != m_packing.columns[b].first.bin)
        return false;
    Counts half = both;
    for (std::int64_t& count : half) {
        if (count % 2 != 0)
            return false;
        count /= 2;
    }
    if (!fits(m_packing.columns[a].first.bin, half))
        return false;
    return replace(a, b, half, half);
}

bool Consolidation::intoKnown(std::size_t a, std::size_t b, const Counts& both) {
    const std::size_t binA = m_packing.columns[a].first.bin;
    const std::size_t binB = m_packing.columns[b].first.bin;
    for (std::size_t known = 0; known < m_packing.columns.size(); ++known) {
        const Column& pattern = m_packing.columns[known].first;
        if (known == a || known == b || (pattern.bin != binA && pattern.bin != binB))
            continue;
        m_budget.spend(1);
        const bool inside = std::all_of(
            pattern.cuts.begin(), pattern.cuts.end(), [&](const auto& cut) {
                return both[static_cast<std::size_t>(cut.first)] >= cut.second;
            });
        if (!inside)
            continue;
        Counts rest = both;
        for (const auto& [kind, count] : pattern.cuts)
            rest[static_cast<std::size_t>(kind)] -= count;
        const bool asA = pattern.bin == binA;
        if (!fits(asA ? binB : binA, rest))
            continue;
        const Counts taken = countsOf(pattern, m_instance.kinds());
        if (replace(a, b, asA ? taken : rest, asA ? rest : taken))
            return true;
    }
    return false;
}

bool Consolidation::replace(
    std::size_t a, std::size_t b, const Counts& first, const Counts& second) {
    Column& one = m_packing.columns[a].first;
    Column& other = m_packing.columns[b].first;
    Column newOne = column(one.bin, first);
    Column newOther = column(other.bin, second);
    if (newOne.cost + newOther.cost > one.cost + other.cost)
        return false; // remainders that counted for something are gone
    one = std::move(newOne);
    other = std::move(newOther);
    return true;
}

Column Consolidation::column(std::size_t bin, const Counts& counts) const {
    Column column{bin, {}, 0};
    for (std::size_t kind = 0; kind < counts.size(); ++kind)
        if (counts[kind] > 0)
            column.cuts.emplace_back(static_cast<int>(kind), counts[kind]);
    column.cost = m_instance.cost(bin, m_instance.width(column));
    return column;
}

bool Consolidation::fits(std::size_t bin, const Counts& counts) const {
    std::int64_t width = 0;
    for (std::size_t kind = 0; kind < counts.size(); ++kind)
        width += counts[kind] * m_instance.widths()[kind];
    return width > 0 && width <= m_instance.bins()[bin].capacity;
}

std::int64_t Consolidation::room(const Line& line) const {
    return m_instance.bins()[line.first.bin].capacity - m_instance.width(line.first);
}

// Tries each stick that is cut like no other as the one to empty, keeps the best.
void Consolidation::gatherRemainder() {
    Lines best = m_packing.columns;
    std::int64_t cost = costOf(best);
    std::int64_t longest = std::numeric_limits<std::int64_t>::min();
    for (const Line& line : best)
        longest = std::max(longest, m_instance.remainder(line.first));
    for (std::size_t target = 0; target < m_packing.columns.size(); ++target) {
        if (m_packing.columns[target].second != 1)
            continue;
        Lines lines = m_packing.columns;
        const std::int64_t left = emptied(target, lines);
        const std::int64_t now = costOf(lines);
        if (now < cost || (now == cost && left > longest)) {
            longest = left;
            cost = now;
            best = std::move(lines);
        }
        const auto count = static_cast<std::int64_t>(m_packing.columns.size());
        if (!m_budget.spend(1 + count / 10))
            break;
    }
    m_packing.columns = std::move(best);
}

std::int64_t Consolidation::emptied(std::size_t target, Lines& lines) const {
    for (std::size_t other = 0; other < lines.size(); ++other)
        if (other != target && lines[other].second == 1)
            while (moveOut(lines[target].first, lines[other].first, room(lines[other]))
                && m_budget.spend(1))
                continue;
    return m_instance.remainder(lines[target].first);
}

// Moves a piece over into so much space, or trades it for a shorter one; whichever leaves the
// most. The last piece stays, since a stick without pieces would not have been bought.
bool Consolidation::moveOut(Column& from, Column& to, std::int64_t space) const {
    const Counts& widths = m_instance.widths();
    std::int64_t most = 0;
    int given = -1;
    int taken = -1;
    const bool last = from.cuts.size() == 1 && from.cuts.front().second == 1;
    for (const auto& out : from.cuts) {
        const std::int64_t width = widths[static_cast<std::size_t>(out.first)];
        if (width <= space && width > most && !last) {
            most = width;
            given = out.first;
            taken = -1;
        }
        for (const auto& in : to.cuts) {
            const std::int64_t gain = width - widths[static_cast<std::size_t>(in.first)];
            if (gain > most && gain <= space) {
                most = gain;
                given = out.first;
                taken = in.first;
            }
        }
    }
    if (given < 0)
        return false;
    change(from, given, -1);
    change(to, given, 1);
    if (taken >= 0) {
        change(from, taken, 1);
        change(to, taken, -1);
    }
    return true;
}

void Consolidation::change(Column& column, int kind, std::int64_t by) const {
    const auto at = std::lower_bound(column.cuts.begin(), column.cuts.end(), kind,
        [](const auto& cut, int wanted) { return cut.first < wanted; });
    if (at == column.cuts.end() || at->first != kind)
        column.cuts.insert(at, {kind, by});
    else if ((at->second += by) == 0)
        column.cuts.erase(at);
    column.cost = m_instance.cost(column.bin, m_instance.width(column));
}

} // namespace miterbook::packing
