// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/incumbent.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace miterbook::packing {

namespace {

std::int64_t longestRemainder(const Instance& instance, const Packing& packing) {
    std::int64_t longest = std::numeric_limits<std::int64_t>::min();
    for (const auto& [column, times] : packing.columns)
        longest = std::max(longest, instance.remainder(column));
    return longest;
}

bool preferred(const Instance& instance, const Packing& a, const Packing& b) {
    const auto rank
        = [](const Packing& p) { return std::tuple(p.missingWidth, p.cost, p.columns.size()); };
    if (rank(a) != rank(b))
        return rank(a) < rank(b);
    return longestRemainder(instance, a) > longestRemainder(instance, b);
}

} // namespace

void tidy(Packing& packing) {
    std::sort(packing.columns.begin(), packing.columns.end(), [](const auto& a, const auto& b) {
        return std::tie(a.first.bin, a.first.cuts) < std::tie(b.first.bin, b.first.cuts);
    });
    std::vector<std::pair<Column, std::int64_t>> merged;
    for (auto& [column, times] : packing.columns) {
        if (times == 0 || column.cuts.empty())
            continue;
        if (!merged.empty() && merged.back().first == column)
            merged.back().second += times;
        else
            merged.emplace_back(std::move(column), times);
    }
    packing.columns = std::move(merged);
}

bool Incumbent::offer(Packing packing) {
    tidy(packing);
    if (m_any && !preferred(m_instance, packing, m_packing))
        return false;
    m_packing = std::move(packing);
    m_any = true;
    tell();
    return true;
}

void Incumbent::raiseBound(std::int64_t bound) {
    if (bound <= m_bound)
        return;
    m_bound = bound;
    tell();
}

std::int64_t Incumbent::cutoff() const {
    return complete() ? m_packing.cost : std::numeric_limits<std::int64_t>::max() / 4;
}

void Incumbent::tell() const {
    if (m_progress && m_any)
        m_progress(m_instance.plan(m_packing), std::min(m_bound, m_packing.cost));
}

} // namespace miterbook::packing
