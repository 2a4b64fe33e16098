// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/check.h"

#include "packing/wide.h"

namespace miterbook::packing {

namespace {

using Sentence = std::optional<std::string>;

class Checker {
public:
    Checker(const Problem& problem, const Plan& plan)
        : m_problem(problem)
        , m_plan(plan)
        , m_cut(problem.pieces.size(), 0)
        , m_used(problem.sticks.size(), 0) {}

    Sentence run() {
        for (std::size_t i = 0; i < m_plan.patterns.size(); ++i)
            if (auto sentence = pattern(m_plan.patterns[i], i + 1))
                return sentence;
        if (auto sentence = missing())
            return sentence;
        if (auto sentence = sticks())
            return sentence;
        if (auto sentence = pieces())
            return sentence;
        if (m_cost != m_plan.cost)
            return "The plan says " + std::to_string(m_plan.cost) + " cents where its sticks add "
                + "up to " + std::to_string(static_cast<long long>(m_cost)) + ".";
        return std::nullopt;
    }

private:
    Sentence pattern(const Pattern& pattern, std::size_t number) {
        const std::string name = "Pattern " + std::to_string(number);
        if (pattern.stick >= m_problem.sticks.size())
            return name + " uses a stick that does not exist.";
        if (pattern.times <= 0)
            return name + " is cut no times.";
        Wide length = 0;
        Wide cuts = 0;
        for (const Share& share : pattern.shares) {
            if (share.piece >= m_problem.pieces.size() || share.count <= 0)
                return name + " holds a piece that does not exist.";
            length += static_cast<Wide>(m_problem.pieces[share.piece].length) * share.count;
            cuts += share.count;
            m_cut[share.piece] += static_cast<Wide>(share.count) * pattern.times;
        }
        if (cuts == 0)
            return name + " holds no piece.";
        const Stick& stick = m_problem.sticks[pattern.stick];
        const Wide usable = static_cast<Wide>(stick.length) - m_problem.trim;
        if (length + (cuts - 1) * m_problem.kerf > usable)
            return name + " does not fit on its stick.";
        m_used[pattern.stick] += pattern.times;
        const Wide left = usable - length - cuts * m_problem.kerf;
        m_cost += (stick.price - credit(left, stick.price)) * pattern.times;
        return std::nullopt;
    }

    Wide credit(Wide left, Wide price) const {
        const Salvage& salvage = m_problem.salvage;
        if (salvage.cents == 0 || left < salvage.shortest || left <= 0)
            return 0;
        const Wide worth = left * salvage.cents / salvage.perLength;
        return worth < price ? worth : price;
    }

    Sentence missing() {
        for (const Share& share : m_plan.missing) {
            if (share.piece >= m_problem.pieces.size() || share.count <= 0)
                return "A piece that does not exist is named as missing.";
            m_cut[share.piece] += share.count;
        }
        return std::nullopt;
    }

    Sentence sticks() const {
        for (std::size_t s = 0; s < m_used.size(); ++s)
            if (const auto& available = m_problem.sticks[s].available; available)
                if (m_used[s] > *available)
                    return "Stick " + std::to_string(s + 1)
                        + " is used more often than it is there.";
        return std::nullopt;
    }

    Sentence pieces() const {
        for (std::size_t i = 0; i < m_cut.size(); ++i)
            if (m_cut[i] != m_problem.pieces[i].count)
                return "Piece " + std::to_string(i + 1) + " is cut a wrong number of times.";
        return std::nullopt;
    }

    const Problem& m_problem;
    const Plan& m_plan;
    std::vector<Wide> m_cut;
    std::vector<Wide> m_used;
    Wide m_cost = 0;
};

} // namespace

std::optional<std::string> fault(const Problem& problem, const Plan& plan) {
    return Checker(problem, plan).run();
}

} // namespace miterbook::packing
