// SPDX-License-Identifier: GPL-3.0-or-later
// From merged kinds back to the caller's pieces.
#include "packing/instance.h"

#include <algorithm>
#include <map>

namespace miterbook::packing {

namespace {

// Hands out the caller's pieces of each kind, in the order they were given.
class Dealer {
public:
    Dealer(const Problem& problem, const std::vector<std::vector<std::size_t>>& origins)
        : m_origins(origins)
        , m_next(origins.size(), 0) {
        for (const Piece& piece : problem.pieces)
            m_left.push_back(piece.count);
    }

    // One stick's worth for these cuts, without taking it.
    std::vector<Share> look(const Column& column) const {
        std::vector<Share> shares;
        for (const auto& [kind, count] : column.cuts)
            append(static_cast<std::size_t>(kind), count, shares);
        return shares;
    }

    // How often the very same shares can be handed out, at most wanted.
    std::int64_t repeats(const std::vector<Share>& shares, std::int64_t wanted) const {
        for (const Share& share : shares)
            wanted = std::min(wanted, m_left[share.piece] / share.count);
        return wanted;
    }

    void take(const Column& column, const std::vector<Share>& shares, std::int64_t times) {
        for (const Share& share : shares)
            m_left[share.piece] -= share.count * times;
        for (const auto& cut : column.cuts)
            advance(static_cast<std::size_t>(cut.first));
    }

    std::vector<Share> takeLoose(std::size_t kind, std::int64_t count) {
        std::vector<Share> shares;
        append(kind, count, shares);
        for (const Share& share : shares)
            m_left[share.piece] -= share.count;
        advance(kind);
        return shares;
    }

private:
    void append(std::size_t kind, std::int64_t count, std::vector<Share>& shares) const {
        for (std::size_t at = m_next[kind]; count > 0 && at < m_origins[kind].size(); ++at) {
            const std::size_t piece = m_origins[kind][at];
            const std::int64_t some = std::min(count, m_left[piece]);
            if (some > 0)
                shares.push_back({piece, some});
            count -= some;
        }
    }

    void advance(std::size_t kind) {
        std::size_t& at = m_next[kind];
        while (at < m_origins[kind].size() && m_left[m_origins[kind][at]] == 0)
            ++at;
    }

    const std::vector<std::vector<std::size_t>>& m_origins;
    std::vector<std::size_t> m_next; // per kind, the first origin not used up
    std::vector<std::int64_t> m_left;
};

} // namespace

Plan Instance::plan(const Packing& packing) const {
    Plan plan;
    plan.cost = packing.cost;
    Dealer dealer(*m_problem, m_origins);
    for (const auto& [column, times] : packing.columns) {
        for (std::int64_t left = times; left > 0;) {
            const std::vector<Share> shares = dealer.look(column);
            const std::int64_t repeats = dealer.repeats(shares, left);
            dealer.take(column, shares, repeats);
            plan.patterns.push_back({m_bins[column.bin].origin, repeats, shares});
            left -= repeats;
        }
    }
    plan.missing = m_hopeless;
    for (std::size_t kind = 0; kind < packing.missing.size(); ++kind)
        for (const Share& share : dealer.takeLoose(kind, packing.missing[kind]))
            plan.missing.push_back(share);
    return plan;
}

} // namespace miterbook::packing
