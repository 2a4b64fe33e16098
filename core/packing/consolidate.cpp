// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/consolidate.h"

#include "packing/incumbent.h"

#include <algorithm>

namespace miterbook::packing {

namespace {

Counts countsOf(const Column& column, std::size_t kinds) {
    Counts counts(kinds, 0);
    for (const auto& [kind, count] : column.cuts)
        counts[static_cast<std::size_t>(kind)] += count;
    return counts;
}

} // namespace

Consolidation::Consolidation(const Instance& instance, Packing packing, Budget& budget)
    : m_instance(instance)
    , m_packing(std::move(packing))
    , m_budget(budget) {
}

Packing Consolidation::run() {
    if (m_instance.salvages())
        return std::move(m_packing);
    tidy(m_packing);
    while (mergeOnce())
        tidy(m_packing);
    gatherRemainder();
    tidy(m_packing);
    return std::move(m_packing);
}

bool Consolidation::mergeOnce() {
    for (std::size_t a = 0; a < m_packing.columns.size(); ++a) {
        for (std::size_t b = a + 1; b < m_packing.columns.size(); ++b) {
            if (!m_budget.spend(2))
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
    replace(a, b, half, half);
    return true;
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
        replace(a, b, asA ? taken : rest, asA ? rest : taken);
        return true;
    }
    return false;
}

void Consolidation::replace(
    std::size_t a, std::size_t b, const Counts& first, const Counts& second) {
    Column& one = m_packing.columns[a].first;
    Column& other = m_packing.columns[b].first;
    one = column(one.bin, first);
    other = column(other.bin, second);
}

Column Consolidation::column(std::size_t bin, const Counts& counts) const {
    Column column{bin, {}, m_instance.bins()[bin].price};
    for (std::size_t kind = 0; kind < counts.size(); ++kind)
        if (counts[kind] > 0)
            column.cuts.emplace_back(static_cast<int>(kind), counts[kind]);
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
    std::vector<Line> best = m_packing.columns;
    std::int64_t longest = 0;
    for (const Line& line : best)
        longest = std::max(longest, room(line));
    for (std::size_t target = 0; target < m_packing.columns.size(); ++target) {
        if (m_packing.columns[target].second != 1)
            continue;
        std::vector<Line> lines = m_packing.columns;
        const std::int64_t left = emptied(target, lines);
        if (left > longest) {
            longest = left;
            best = std::move(lines);
        }
        if (!m_budget.spend(1))
            break;
    }
    m_packing.columns = std::move(best);
}

std::int64_t Consolidation::emptied(std::size_t target, std::vector<Line>& lines) const {
    for (std::size_t other = 0; other < lines.size(); ++other)
        if (other != target && lines[other].second == 1)
            while (moveOut(lines[target], lines[other]) && m_budget.spend(1))
                continue;
    return room(lines[target]);
}

// Moves a piece over, or trades it for a shorter one; whichever leaves the most. The last piece
// stays, since a stick without pieces would not have been bought.
bool Consolidation::moveOut(Line& from, Line& to) const {
    const Counts& widths = m_instance.widths();
    const std::int64_t space = room(to);
    std::int64_t most = 0;
    int given = -1;
    int taken = -1;
    const bool last = from.first.cuts.size() == 1 && from.first.cuts.front().second == 1;
    for (const auto& out : from.first.cuts) {
        const std::int64_t width = widths[static_cast<std::size_t>(out.first)];
        if (width <= space && width > most && !last) {
            most = width;
            given = out.first;
            taken = -1;
        }
        for (const auto& in : to.first.cuts) {
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
    Counts mine = countsOf(from.first, widths.size());
    Counts theirs = countsOf(to.first, widths.size());
    --mine[static_cast<std::size_t>(given)];
    ++theirs[static_cast<std::size_t>(given)];
    if (taken >= 0) {
        ++mine[static_cast<std::size_t>(taken)];
        --theirs[static_cast<std::size_t>(taken)];
    }
    from.first = column(from.first.bin, mine);
    to.first = column(to.first.bin, theirs);
    return true;
}

} // namespace miterbook::packing
