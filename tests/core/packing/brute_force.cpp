// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/brute_force.h"

#include <algorithm>
#include <map>

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

} // namespace

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
