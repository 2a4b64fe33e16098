// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/coarse.h"

#include "packing/quick.h"
#include "packing/search.h"

#include <algorithm>

namespace miterbook::packing {

namespace {

constexpr std::size_t manyWidths = 600;
constexpr std::size_t farTooManyWidths = 2500;
constexpr std::size_t finenesses[] = {120, 300, 600, 1200}; // groups

} // namespace

bool tooManyWidths(const Instance& instance) {
    return instance.kinds() > manyWidths;
}

bool hopelesslyManyWidths(const Instance& instance) {
    return instance.kinds() > farTooManyWidths;
}

// As few groups as lose no more than mostLost each. Widths fall, so rounding down looks from the
// narrow end.
std::vector<std::size_t> Coarse::grouped(std::int64_t mostLost, Rounding rounding) const {
    const Counts& widths = m_instance.widths();
    const Counts& demand = m_instance.demand();
    const bool up = rounding == Rounding::up;
    std::vector<std::size_t> starts;
    std::int64_t lost = 0;
    std::int64_t width = -1; // of the group that is being filled
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const std::size_t kind = up ? i : widths.size() - 1 - i;
        lost += std::abs(width - widths[kind]) * demand[kind];
        if (width >= 0 && lost <= mostLost)
            continue;
        starts.push_back(up ? kind : kind + 1);
        width = widths[kind];
        lost = 0;
    }
    if (up) {
        starts.push_back(widths.size());
        return starts;
    }
    std::reverse(starts.begin(), starts.end());
    starts.insert(starts.begin(), 0);
    return starts;
}

Coarse::Coarse(const Instance& instance, std::size_t groups, Rounding rounding)
    : m_instance(instance) {
    std::int64_t low = 0;
    std::int64_t high = instance.longestCapacity();
    while (grouped(high, rounding).size() > groups + 1)
        high *= 2;
    while (low < high) {
        const std::int64_t middle = low + (high - low) / 2;
        if (grouped(middle, rounding).size() <= groups + 1)
            high = middle;
        else
            low = middle + 1;
    }
    m_starts = grouped(high, rounding);
    for (std::size_t group = 0; group + 1 < m_starts.size(); ++group) {
        Piece piece;
        for (std::size_t kind = m_starts[group]; kind < m_starts[group + 1]; ++kind)
            piece.count += instance.demand()[kind];
        piece.length = instance.widths()[rounding == Rounding::up ? m_starts[group]
                                                                  : m_starts[group + 1] - 1];
        m_problem.pieces.push_back(piece);
    }
    for (const Bin& bin : instance.bins())
        m_problem.sticks.push_back({bin.capacity, bin.price,
            bin.limited ? std::optional<std::int64_t>(bin.available) : std::nullopt});
}

// One stick's worth, from the widest of each group on.
Column Coarse::dealt(const Instance& coarse, const Column& column, Counts& left) const {
    Column result{coarse.bins()[column.bin].origin, {}, 0};
    for (const auto& [group, count] : column.cuts) {
        std::int64_t wanted = count;
        const std::size_t end = m_starts[static_cast<std::size_t>(group) + 1];
        for (std::size_t kind = m_starts[static_cast<std::size_t>(group)]; kind < end; ++kind) {
            const std::int64_t some = std::min(wanted, left[kind]);
            if (some <= 0)
                continue;
            result.cuts.emplace_back(static_cast<int>(kind), some);
            left[kind] -= some;
            wanted -= some;
            if (wanted == 0)
                break;
        }
    }
    result.cost = m_instance.cost(result.bin, m_instance.width(result));
    return result;
}

Packing Coarse::back(const Instance& coarse, const Packing& packing) const {
    Packing result;
    Counts left = m_instance.demand();
    for (const auto& [column, times] : packing.columns) {
        for (std::int64_t i = 0; i < times; ++i) {
            Column real = dealt(coarse, column, left);
            result.cost += real.cost;
            if (!result.columns.empty() && result.columns.back().first == real)
                ++result.columns.back().second;
            else
                result.columns.emplace_back(std::move(real), 1);
        }
    }
    result.missing = left;
    for (std::size_t kind = 0; kind < left.size(); ++kind)
        result.missingWidth += left[kind] * m_instance.widths()[kind];
    return result;
}

void searchCoarsely(const Instance& instance, Incumbent& incumbent, Budget& budget) {
    const Progress silent;
    for (const std::size_t groups : finenesses) {
        if (groups > manyWidths && !hopelesslyManyWidths(instance))
            break; // the whole program does as well
        for (const auto rounding : {Coarse::Rounding::up, Coarse::Rounding::down}) {
            if (budget.exhausted() || incumbent.proven())
                return;
            const bool up = rounding == Coarse::Rounding::up;
            if (!up && instance.salvages())
                continue; // the remainders of narrower pieces would be worth more
            const Coarse coarse(instance, groups, rounding);
            const Instance simpler(coarse.problem());
            Incumbent found(simpler, silent);
            found.offer(quickPacking(simpler, budget));
            Search search(simpler, found, budget);
            if (up) {
                search.dive();
                incumbent.offer(coarse.back(simpler, found.packing()));
            } else {
                search.bound();
                incumbent.raiseBound(found.bound());
            }
        }
    }
}

} // namespace miterbook::packing
