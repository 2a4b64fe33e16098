// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/by_hand.h"

#include "packing/wide.h"

#include <algorithm>
#include <map>

namespace miterbook::packing {

namespace {

struct Begun {
    std::size_t stick = 0;
    std::int64_t left = 0; // room, one kerf more than the remainder
    std::int64_t used = 0;
    std::vector<std::size_t> pieces;
};

bool cheaperPerLength(const Stick& a, const Stick& b) {
    return static_cast<Wide>(a.price) * b.length < static_cast<Wide>(b.price) * a.length;
}

class FirstFit {
public:
    explicit FirstFit(const Problem& problem)
        : m_problem(problem) {
        beginOffcuts();
    }

    Plan run() {
        std::vector<std::size_t> order(m_problem.pieces.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return m_problem.pieces[a].length > m_problem.pieces[b].length;
        });
        for (const std::size_t piece : order)
            for (std::int64_t i = 0; i < m_problem.pieces[piece].count; ++i)
                place(piece);
        return plan();
    }

private:
    std::int64_t room(std::size_t stick) const {
        return m_problem.sticks[stick].length - m_problem.trim + m_problem.kerf;
    }

    void beginOffcuts() {
        for (std::size_t s = 0; s < m_problem.sticks.size(); ++s)
            if (const auto& available = m_problem.sticks[s].available; available)
                for (std::int64_t i = 0; i < *available; ++i)
                    m_begun.push_back({s, room(s), 0, {}});
        std::stable_sort(m_begun.begin(), m_begun.end(),
            [](const Begun& a, const Begun& b) { return a.left > b.left; });
    }

    void place(std::size_t piece) {
        const std::int64_t width = m_problem.pieces[piece].length + m_problem.kerf;
        auto begun = std::find_if(
            m_begun.begin(), m_begun.end(), [&](const Begun& b) { return b.left >= width; });
        if (begun == m_begun.end()) {
            const int stick = newStick(width);
            if (stick < 0) {
                m_missing.push_back({piece, 1});
                return;
            }
            const auto kind = static_cast<std::size_t>(stick);
            m_begun.push_back({kind, room(kind), 0, {}});
            begun = m_begun.end() - 1;
        }
        begun->left -= width;
        begun->used += width;
        begun->pieces.push_back(piece);
    }

    int newStick(std::int64_t width) const {
        int best = -1;
        for (std::size_t s = 0; s < m_problem.sticks.size(); ++s) {
            const Stick& stick = m_problem.sticks[s];
            if (stick.available || room(s) < width)
                continue;
            if (best < 0
                || cheaperPerLength(stick, m_problem.sticks[static_cast<std::size_t>(best)]))
                best = static_cast<int>(s);
        }
        return best;
    }

    std::size_t cheapestFor(const Begun& begun) const {
        std::size_t best = begun.stick;
        if (m_problem.sticks[best].available)
            return best;
        for (std::size_t s = 0; s < m_problem.sticks.size(); ++s)
            if (!m_problem.sticks[s].available && room(s) >= begun.used
                && m_problem.sticks[s].price < m_problem.sticks[best].price)
                best = s;
        return best;
    }

    std::int64_t cost(const Begun& begun, std::size_t stick) const {
        const Salvage& salvage = m_problem.salvage;
        const std::int64_t price = m_problem.sticks[stick].price;
        const std::int64_t left = m_problem.sticks[stick].length - m_problem.trim - begun.used;
        if (left <= 0 || left < salvage.shortest)
            return price;
        const Wide worth = static_cast<Wide>(left) * salvage.cents / salvage.perLength;
        return worth < price ? price - static_cast<std::int64_t>(worth) : 0;
    }

    Plan plan() const {
        Plan plan;
        plan.missing = m_missing;
        for (const Begun& begun : m_begun) {
            if (begun.pieces.empty())
                continue;
            Pattern pattern{cheapestFor(begun), 1, {}};
            for (const std::size_t piece : begun.pieces) {
                if (pattern.shares.empty() || pattern.shares.back().piece != piece)
                    pattern.shares.push_back({piece, 0});
                ++pattern.shares.back().count;
            }
            plan.cost += cost(begun, pattern.stick);
            plan.patterns.push_back(std::move(pattern));
        }
        return plan;
    }

    const Problem& m_problem;
    std::vector<Begun> m_begun;
    std::vector<Share> m_missing;
};

} // namespace

Plan firstFit(const Problem& problem) {
    return FirstFit(problem).run();
}

std::int64_t byPercentage(const Problem& problem, int percent) {
    Wide length = 0;
    for (const Piece& piece : problem.pieces)
        length += static_cast<Wide>(piece.length) * piece.count;
    const Stick* best = nullptr;
    for (const Stick& stick : problem.sticks)
        if (!stick.available && (!best || cheaperPerLength(stick, *best)))
            best = &stick;
    if (!best)
        return 0;
    const Wide needed = length * (100 + percent);
    const Wide perStick = static_cast<Wide>(best->length) * 100;
    return static_cast<std::int64_t>((needed + perStick - 1) / perStick) * best->price;
}

} // namespace miterbook::packing
