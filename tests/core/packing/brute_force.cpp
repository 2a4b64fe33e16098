// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/brute_force.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook::packing {

namespace {

constexpr std::int64_t never = -1;

// Sets of single pieces as bits; the first piece left always goes on the next stick.
class Trial {
public:
    explicit Trial(const Problem& problem)
        : m_problem(problem) {
        for (const Piece& piece : problem.pieces)
            for (std::int64_t i = 0; i < piece.count; ++i)
                m_lengths.push_back(piece.length);
        for (const Stick& stick : problem.sticks)
            m_left.push_back(stick.available.value_or(static_cast<std::int64_t>(m_lengths.size())));
    }

    std::int64_t best() { return best((1U << m_lengths.size()) - 1); }

private:
    std::int64_t cost(const Stick& stick, unsigned set) const {
        std::int64_t used = 0;
        for (std::size_t i = 0; i < m_lengths.size(); ++i)
            if ((set >> i & 1U) != 0)
                used += m_lengths[i] + m_problem.kerf;
        const std::int64_t left = stick.length - m_problem.trim - used;
        if (left < -m_problem.kerf)
            return never;
        const Salvage& salvage = m_problem.salvage;
        if (left <= 0 || left < salvage.shortest)
            return stick.price;
        return stick.price - std::min(stick.price, left * salvage.cents / salvage.perLength);
    }

    std::int64_t best(unsigned left) {
        if (left == 0)
            return 0;
        const auto known = m_known.find({left, m_left});
        if (known != m_known.end())
            return known->second;
        std::int64_t least = never;
        const unsigned first = left & (~left + 1);
        for (unsigned set = left; set != 0; set = (set - 1) & left) {
            if ((set & first) == 0)
                continue;
            for (std::size_t s = 0; s < m_left.size(); ++s) {
                const std::int64_t here = m_left[s] > 0 ? cost(m_problem.sticks[s], set) : never;
                if (here == never)
                    continue;
                --m_left[s];
                const std::int64_t rest = best(left & ~set);
                ++m_left[s];
                if (rest != never && (least == never || here + rest < least))
                    least = here + rest;
            }
        }
        m_known[{left, m_left}] = least;
        return least;
    }

    const Problem& m_problem;
    std::vector<std::int64_t> m_lengths;
    std::vector<std::int64_t> m_left;
    std::map<std::pair<unsigned, std::vector<std::int64_t>>, std::int64_t> m_known;
};

// One stick as it is cut: which, and the lengths in order.
using Cut = std::pair<std::size_t, std::vector<std::int64_t>>;

std::int64_t remainder(const Problem& problem, const Cut& cut) {
    std::int64_t left = problem.sticks[cut.first].length - problem.trim;
    for (const std::int64_t length : cut.second)
        left -= length + problem.kerf;
    return left;
}

std::int64_t priceOf(const Problem& problem, const Cut& cut) {
    const std::int64_t left = remainder(problem, cut);
    const Salvage& salvage = problem.salvage;
    const std::int64_t price = problem.sticks[cut.first].price;
    if (left <= 0 || left < salvage.shortest)
        return price;
    return price - std::min(price, left * salvage.cents / salvage.perLength);
}

Tidy tidinessOf(const Problem& problem, const std::vector<Cut>& cuts) {
    Tidy tidy{std::set<Cut>(cuts.begin(), cuts.end()).size(), remainder(problem, cuts.front())};
    for (const Cut& cut : cuts)
        tidy.longest = std::max(tidy.longest, remainder(problem, cut));
    return tidy;
}

// Every way of spending so much: each piece joins a stick begun before or begins one.
class EveryWay {
public:
    EveryWay(const Problem& problem, std::int64_t cost)
        : m_problem(problem)
        , m_cost(cost)
        , m_used(problem.sticks.size(), 0) {
        for (const Piece& piece : problem.pieces)
            m_lengths.insert(m_lengths.end(), static_cast<std::size_t>(piece.count), piece.length);
    }

    Tidy best() {
        place(0);
        return m_best;
    }

private:
    void place(std::size_t at) {
        if (at == m_lengths.size())
            return judge();
        for (std::size_t stick = 0; stick < m_cuts.size(); ++stick) {
            m_cuts[stick].second.push_back(m_lengths[at]);
            if (remainder(m_problem, m_cuts[stick]) >= -m_problem.kerf)
                place(at + 1);
            m_cuts[stick].second.pop_back();
        }
        for (std::size_t s = 0; s < m_problem.sticks.size(); ++s) {
            const auto& available = m_problem.sticks[s].available;
            m_cuts.push_back({s, {m_lengths[at]}});
            ++m_used[s];
            if (remainder(m_problem, m_cuts.back()) >= -m_problem.kerf
                && (!available || m_used[s] <= *available))
                place(at + 1);
            --m_used[s];
            m_cuts.pop_back();
        }
    }

    void judge() {
        std::int64_t cost = 0;
        for (const Cut& cut : m_cuts)
            cost += priceOf(m_problem, cut);
        if (cost != m_cost)
            return;
        std::vector<Cut> cuts = m_cuts;
        for (Cut& cut : cuts)
            std::sort(cut.second.begin(), cut.second.end());
        const Tidy tidy = tidinessOf(m_problem, cuts);
        if (m_best.patterns == 0 || tidy.patterns < m_best.patterns
            || (tidy.patterns == m_best.patterns && tidy.longest > m_best.longest))
            m_best = tidy;
    }

    const Problem& m_problem;
    std::int64_t m_cost;
    std::vector<std::int64_t> m_lengths;
    std::vector<std::int64_t> m_used;
    std::vector<Cut> m_cuts;
    Tidy m_best;
};

} // namespace

Tidy tidiest(const Problem& problem, std::int64_t cost) {
    return EveryWay(problem, cost).best();
}

Tidy tidiness(const Problem& problem, const Plan& plan) {
    std::vector<Cut> cuts;
    for (const Pattern& pattern : plan.patterns) {
        Cut cut{pattern.stick, {}};
        for (const Share& share : pattern.shares)
            cut.second.insert(cut.second.end(), static_cast<std::size_t>(share.count),
                problem.pieces[share.piece].length);
        std::sort(cut.second.begin(), cut.second.end());
        cuts.push_back(std::move(cut));
    }
    return tidinessOf(problem, cuts);
}

std::optional<std::int64_t> bruteForce(const Problem& problem) {
    const std::int64_t best = Trial(problem).best();
    if (best == never)
        return std::nullopt;
    return best;
}

Problem smallProblem(std::mt19937& random, bool limited, bool credited) {
    const auto upTo
        = [&](int from, int to) { return std::uniform_int_distribution<int>(from, to)(random); };
    Problem problem;
    problem.kerf = upTo(0, 3);
    problem.trim = upTo(0, 1) * upTo(0, 6);
    for (int i = upTo(1, 3); i > 0; --i) {
        Stick stick{upTo(60, 160), upTo(0, 9) == 0 ? 0 : upTo(50, 150), std::nullopt};
        if (stick.price == 0 || limited || upTo(0, 3) == 0)
            stick.available = upTo(0, 3);
        problem.sticks.push_back(stick);
    }
    if (!limited)
        problem.sticks.push_back({170, upTo(90, 200), std::nullopt});
    for (int i = upTo(2, 7); i > 0; --i) {
        if (!problem.pieces.empty() && upTo(0, 2) == 0)
            ++problem.pieces.back().count;
        else
            problem.pieces.push_back({upTo(10, 140), 1});
    }
    if (credited)
        problem.salvage = {upTo(0, 40), upTo(1, 20), upTo(10, 40)};
    return problem;
}

} // namespace miterbook::packing
