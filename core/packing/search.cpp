// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/search.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

namespace {

constexpr std::int64_t leafWork = 20'000; // on each leaf in the first round
constexpr std::int64_t firstMending = 10'000;

// Beyond this the simplex spends its time on columns that hardly matter.
std::size_t manyColumns(const Instance& instance) {
    return 600 + 4 * instance.kinds();
}

} // namespace

Search::Search(const Instance& instance, Incumbent& incumbent, Budget& budget, Depth depth)
    : m_instance(instance)
    , m_incumbent(incumbent)
    , m_budget(budget)
    , m_master(instance)
    , m_dive(instance, m_master, incumbent, budget)
    , m_exhaust(instance, m_master, incumbent, budget)
    , m_mend(instance, incumbent, budget)
    , m_depth(depth) {
    for (const auto& [column, times] : incumbent.packing().columns)
        m_master.add(column);
}

// No better plan spends more than the cutoff on one kind of stick.
StickLimits Search::rootLimits() const {
    StickLimits limits;
    for (const Bin& bin : m_instance.bins()) {
        std::int64_t upper = bin.available;
        if (bin.price > 0 && !m_instance.salvages())
            upper = std::min(upper, m_incumbent.cutoff() / bin.price);
        limits.lower.push_back(0);
        limits.upper.push_back(upper);
    }
    return limits;
}

bool Search::bound() {
    const StickLimits limits = rootLimits();
    m_master.ask(m_instance.demand(), limits, {});
    const auto outcome = m_master.solve(m_incumbent.cutoff(), m_budget);
    m_incumbent.raiseBound(m_master.bound());
    if (outcome == Master::Outcome::stopped)
        m_dive.round(limits);
    m_rootDuals = m_master.duals();
    m_rootObjective = m_master.objective();
    return outcome == Master::Outcome::solved;
}

bool Search::dive() {
    if (!bound())
        return false;
    const StickLimits limits = rootLimits();
    for (int d = 0; d < 2 && !m_incumbent.proven() && !m_budget.exhausted(); ++d)
        m_dive.run(limits, d);
    return true;
}

void Search::run() {
    if (!dive())
        return;
    mend(firstMending);
    if (m_incumbent.complete() && !m_incumbent.proven() && !m_budget.exhausted())
        branch();
}

void Search::mend(std::int64_t work) {
    if (m_depth == Depth::mending && !m_incumbent.proven() && !m_budget.exhausted())
        m_mend.run(work);
}

void Search::branch() {
    m_open.push({m_incumbent.bound(), m_numbers++, rootLimits()});
    while (!m_open.empty() && !m_budget.exhausted()) {
        Node node = m_open.top();
        m_open.pop();
        if (node.bound >= m_incumbent.cutoff())
            break; // and so are all others
        if (m_master.columns() > manyColumns(m_instance))
            m_master.forget(
                m_rootDuals, static_cast<double>(m_incumbent.cutoff()) - m_rootObjective);
        process(std::move(node));
        if (!m_budget.exhausted())
            m_incumbent.raiseBound(openBound());
    }
    for (int round = 0; round < 6 && !m_unresolved.empty() && !m_budget.exhausted(); ++round) {
        mend(firstMending << (round + 1));
        diveAtLeaves(2 + round);
        closeLeaves(leafWork << (2 * round));
    }
}

// The lowest leaves first: a plan found there is the cheapest.
void Search::diveAtLeaves(int discrepancies) {
    std::sort(m_unresolved.begin(), m_unresolved.end(),
        [](const Node& a, const Node& b) { return b < a; });
    for (const Node& node : m_unresolved) {
        if (m_budget.exhausted() || node.bound >= m_incumbent.cutoff())
            break;
        m_dive.run(node.limits, discrepancies);
    }
    if (!m_budget.exhausted())
        m_incumbent.raiseBound(openBound());
}

// Closed leaves go; the bound may rise.
void Search::closeLeaves(std::int64_t work) {
    std::vector<Node> left;
    for (Node& node : m_unresolved) {
        const bool open = node.bound < m_incumbent.cutoff();
        if (open && (m_budget.exhausted() || !m_exhaust.run(node.limits, work)))
            left.push_back(std::move(node));
    }
    m_unresolved = std::move(left);
    if (!m_budget.exhausted())
        m_incumbent.raiseBound(openBound());
}

std::int64_t Search::openBound() const {
    std::int64_t bound = m_incumbent.cutoff();
    if (!m_open.empty())
        bound = std::min(bound, m_open.top().bound);
    for (const Node& node : m_unresolved)
        bound = std::min(bound, node.bound);
    return bound;
}

void Search::process(Node node) {
    m_master.ask(m_instance.demand(), node.limits, {});
    const auto outcome = m_master.solve(m_incumbent.cutoff(), m_budget);
    if (outcome == Master::Outcome::tooDear)
        return;
    if (outcome == Master::Outcome::solved)
        node.bound = std::max(node.bound, m_master.bound());
    if (outcome == Master::Outcome::stopped && !m_budget.exhausted()) {
        m_unresolved.push_back(std::move(node)); // numerical trouble: left as it is
        return;
    }
    if (node.bound >= m_incumbent.cutoff())
        return;
    const std::vector<double> sticks = m_master.sticks();
    const int bin = fractionalBin(sticks, node.limits);
    if (bin >= 0) {
        split(node, static_cast<std::size_t>(bin), sticks[static_cast<std::size_t>(bin)]);
        return;
    }
    m_dive.run(node.limits, 1);
    if (node.bound >= m_incumbent.cutoff() || splitAround(node, sticks))
        return;
    m_unresolved.push_back(std::move(node));
}

// Of the bins that cost something the one furthest from a whole number.
int Search::fractionalBin(const std::vector<double>& sticks, const StickLimits& limits) const {
    int best = -1;
    double most = 1e-5;
    for (std::size_t bin = 0; bin < sticks.size(); ++bin) {
        if (m_instance.bins()[bin].price == 0 || limits.lower[bin] == limits.upper[bin])
            continue;
        const double distance = std::abs(sticks[bin] - std::round(sticks[bin]));
        if (distance <= most)
            continue;
        most = distance;
        best = static_cast<int>(bin);
    }
    return best;
}

void Search::push(const Node& parent, const StickLimits& limits) {
    m_open.push({parent.bound, m_numbers++, limits});
}

void Search::split(const Node& node, std::size_t bin, double value) {
    StickLimits down = node.limits;
    down.upper[bin] = static_cast<std::int64_t>(std::floor(value));
    StickLimits up = node.limits;
    up.lower[bin] = down.upper[bin] + 1;
    push(node, down);
    push(node, up);
}

// All numbers are whole, but no plan was found: the same numbers stay together for the pieces
// to be looked at, others go their own way.
bool Search::splitAround(const Node& node, const std::vector<double>& sticks) {
    for (std::size_t bin = 0; bin < sticks.size(); ++bin) {
        if (m_instance.bins()[bin].price == 0 || node.limits.lower[bin] == node.limits.upper[bin])
            continue;
        const auto value = static_cast<std::int64_t>(std::llround(sticks[bin]));
        StickLimits limits = node.limits;
        if (value > limits.lower[bin]) {
            limits.upper[bin] = value - 1;
            push(node, limits);
        }
        if (value < node.limits.upper[bin]) {
            limits = node.limits;
            limits.lower[bin] = value + 1;
            push(node, limits);
        }
        limits = node.limits;
        limits.lower[bin] = limits.upper[bin] = value;
        push(node, limits);
        return true;
    }
    return false;
}

} // namespace miterbook::packing
