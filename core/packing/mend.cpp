// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/mend.h"

#include "packing/quick.h"
#include "packing/search.h"

#include <algorithm>

namespace miterbook::packing {

namespace {

constexpr std::size_t fewestSticks = 4;
constexpr std::size_t mostSticks = 9;
constexpr std::int64_t stepWork = 3'000;

std::int64_t costOf(const Packing& packing) {
    std::int64_t cost = 0;
    for (const auto& [column, times] : packing.columns)
        cost += column.cost * times;
    return cost;
}

} // namespace

void Mend::run(std::int64_t work) {
    if (m_instance.salvages() || !m_incumbent.complete())
        return;
    const std::int64_t end = m_budget.spent() + work;
    Packing packing = m_incumbent.packing();
    while (!m_budget.exhausted() && m_budget.spent() < end && !m_incumbent.proven())
        if (!step(packing))
            return;
}

// One stick of each line at most. Half of them are those with the most room, by chance.
std::vector<std::size_t> Mend::chosen(const Packing& packing) {
    const std::size_t count = packing.columns.size();
    const std::size_t wanted = std::min(
        count, fewestSticks + m_random() % (mostSticks - fewestSticks + 1));
    std::vector<std::size_t> lines;
    const auto room = [&](std::size_t line) {
        const Column& column = packing.columns[line].first;
        return m_instance.bins()[column.bin].capacity - m_instance.width(column);
    };
    while (lines.size() < wanted) {
        std::size_t line = m_random() % count;
        if (lines.size() < wanted / 2)
            for (int i = 0; i < 3; ++i)
                if (const std::size_t other = m_random() % count; room(other) > room(line))
                    line = other;
        if (std::find(lines.begin(), lines.end(), line) != lines.end())
            line = m_random() % count;
        if (std::find(lines.begin(), lines.end(), line) == lines.end())
            lines.push_back(line);
    }
    return lines;
}

// Takes one stick of each of these lines out of the packing; the problem of cutting their pieces
// anew, and which kind each of its pieces is.
Problem Mend::withoutThem(
    Packing& packing, const std::vector<std::size_t>& lines, std::vector<int>& kinds) const {
    std::vector<std::pair<int, std::int64_t>> wanted;
    for (const std::size_t line : lines) {
        auto& [column, times] = packing.columns[line];
        wanted.insert(wanted.end(), column.cuts.begin(), column.cuts.end());
        --times;
    }
    std::sort(wanted.begin(), wanted.end());
    std::erase_if(packing.columns, [](const auto& line) { return line.second == 0; });
    Problem problem;
    for (const auto& [kind, count] : wanted) {
        if (kinds.empty() || kinds.back() != kind) {
            kinds.push_back(kind);
            problem.pieces.push_back({m_instance.widths()[static_cast<std::size_t>(kind)], 0});
        }
        problem.pieces.back().count += count;
    }
    addSticks(packing, problem);
    return problem;
}

void Mend::addSticks(const Packing& rest, Problem& problem) const {
    for (const Bin& bin : m_instance.bins())
        problem.sticks.push_back({bin.capacity, bin.price,
            bin.limited ? std::optional<std::int64_t>(bin.available) : std::nullopt});
    for (const auto& [column, times] : rest.columns)
        if (auto& available = problem.sticks[column.bin].available; available)
            *available -= times;
}

// False when there is nothing to exchange.
bool Mend::step(Packing& packing) {
    if (packing.columns.size() < 2)
        return false;
    Packing next = packing;
    std::vector<int> kinds;
    const Problem problem = withoutThem(next, chosen(packing), kinds);
    const Instance part(problem);
    Budget some = m_budget.part(stepWork);
    const Progress silent;
    Incumbent found(part, silent);
    found.raiseBound(simpleBound(part));
    found.offer(quickPacking(part, some));
    if (!found.proven())
        Search(part, found, some, Search::Depth::plain).run();
    m_budget.spend(some.spent() % 500 + 5); // parts book whole polls only
    if (!found.complete())
        return true;
    for (const auto& [column, times] : found.packing().columns) {
        Column back{part.bins()[column.bin].origin, {}, column.cost};
        for (const auto& [kind, count] : column.cuts)
            back.cuts.emplace_back(kinds[static_cast<std::size_t>(kind)], count);
        next.columns.emplace_back(std::move(back), times);
    }
    next.cost = costOf(next);
    if (next.cost > packing.cost)
        return true;
    const bool cheaper = next.cost < packing.cost;
    tidy(next);
    packing = std::move(next);
    if (cheaper)
        m_incumbent.offer(packing);
    return true;
}

} // namespace miterbook::packing
