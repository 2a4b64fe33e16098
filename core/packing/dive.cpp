// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/dive.h"

#include "packing/greedy.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

namespace {

bool isDone(const Counts& demand) {
    return std::all_of(demand.begin(), demand.end(), [](std::int64_t d) { return d == 0; });
}

// How often the column can be used without using up a bin; cuts of pieces that are no longer
// wanted are left out.
Column trimmed(const Column& column, const Counts& demand) {
    Column result{column.bin, {}, column.cost};
    for (const auto& [kind, count] : column.cuts)
        if (const std::int64_t wanted = std::min(count, demand[static_cast<std::size_t>(kind)]); wanted > 0)
            result.cuts.emplace_back(kind, wanted);
    return result;
}

} // namespace

bool Dive::run(const StickLimits& limits, std::int64_t cutoff, int discrepancies) {
    m_cutoff = cutoff;
    m_found = false;
    visit({m_instance.demand(), limits, {}, {}}, discrepancies);
    return m_found;
}

void Dive::take(Node& node, const Column& column, std::int64_t times) const {
    for (const auto& [kind, count] : column.cuts)
        node.demand[static_cast<std::size_t>(kind)] -= count * times;
    node.limits.upper[column.bin] -= times;
    node.limits.lower[column.bin] = std::max<std::int64_t>(0, node.limits.lower[column.bin] - times);
    node.fixed.cost += column.cost * times;
    node.fixed.columns.emplace_back(column, times);
}

void Dive::takeWhole(Node& node, std::vector<std::pair<Column, double>>& uses) const {
    for (auto& [column, value] : uses) {
        auto times = static_cast<std::int64_t>(std::floor(value + 1e-6));
        value -= static_cast<double>(times);
        while (times > 0) {
            Column part = trimmed(column, node.demand);
            std::int64_t repeats = std::min(times, node.limits.upper[column.bin]);
            for (const auto& [kind, count] : part.cuts)
                repeats = std::min(repeats, node.demand[static_cast<std::size_t>(kind)] / count);
            if (part.cuts.empty() || repeats <= 0)
                break;
            part.cost = m_instance.cost(part.bin, m_instance.width(part));
            take(node, part, repeats);
            times -= repeats;
        }
    }
}

bool Dive::finish(Node& node) {
    if (!isDone(node.demand))
        return false;
    node.fixed.missing.assign(node.demand.size(), 0);
    if (node.fixed.cost < m_cutoff) {
        m_found = true;
        m_cutoff = node.fixed.cost;
    }
    m_incumbent.offer(node.fixed);
    return true;
}

// A quick greedy end for what is left.
void Dive::complete(const Node& node) {
    Remaining remaining(m_instance);
    remaining.demand = node.demand;
    remaining.available = node.limits.upper;
    LargestFirst filler(m_instance);
    Packing rest = fillGreedily(m_instance, remaining, filler);
    if (rest.missingWidth > 0 || rest.cost + node.fixed.cost >= m_cutoff)
        return;
    rest.columns.insert(rest.columns.end(), node.fixed.columns.begin(), node.fixed.columns.end());
    rest.cost += node.fixed.cost;
    m_cutoff = rest.cost;
    m_found = true;
    m_incumbent.offer(std::move(rest));
}

void Dive::visit(Node node, int discrepancies) {
    m_master.ask(node.demand, node.limits);
    if (m_master.solve(m_cutoff - node.fixed.cost, m_budget) != Master::Outcome::solved)
        return;
    std::vector<std::pair<Column, double>> uses;
    for (const auto& [index, value] : m_master.solution())
        uses.emplace_back(m_master.column(index), value);
    takeWhole(node, uses);
    if (finish(node))
        return;
    complete(node);
    std::erase_if(uses, [](const auto& use) { return use.second < 1e-6; });
    std::stable_sort(uses.begin(), uses.end(),
        [](const auto& a, const auto& b) { return a.second > b.second + 1e-9; });
    int left = discrepancies;
    for (const auto& use : uses) {
        if (std::find(node.tabu.begin(), node.tabu.end(), use.first) != node.tabu.end())
            continue;
        if (left < 0 || m_budget.exhausted() || node.fixed.cost >= m_cutoff)
            break;
        Node child = node;
        std::vector<std::pair<Column, double>> one{{use.first, 1.0}};
        takeWhole(child, one);
        if (child.fixed.columns.size() == node.fixed.columns.size())
            continue;
        if (!finish(child))
            visit(std::move(child), left);
        node.tabu.push_back(use.first);
        --left;
    }
}

} // namespace miterbook::packing
