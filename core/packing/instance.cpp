// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/instance.h"

#include "packing/wide.h"

#include <algorithm>
#include <functional>
#include <map>
#include <numeric>

namespace miterbook::packing {

Instance::Instance(const Problem& problem)
    : m_problem(&problem) {
    addPieces();
    addBins();
}

void Instance::addPieces() {
    std::int64_t longest = 0;
    for (const Stick& stick : m_problem->sticks)
        if (!stick.available || *stick.available > 0)
            longest = std::max(longest, stick.length - m_problem->trim);
    std::map<std::int64_t, std::vector<std::size_t>, std::greater<>> byLength;
    m_factor = 0;
    for (std::size_t i = 0; i < m_problem->pieces.size(); ++i) {
        const Piece& piece = m_problem->pieces[i];
        if (piece.count == 0)
            continue;
        if (piece.length > longest) {
            m_hopeless.push_back({i, piece.count});
            continue;
        }
        byLength[piece.length].push_back(i);
        m_factor = std::gcd(m_factor, piece.length + m_problem->kerf);
    }
    m_factor = std::max<std::int64_t>(m_factor, 1);
    for (auto& [length, origins] : byLength) {
        std::int64_t count = 0;
        for (const std::size_t i : origins)
            count += m_problem->pieces[i].count;
        m_widths.push_back((length + m_problem->kerf) / m_factor);
        m_demand.push_back(count);
        m_origins.push_back(std::move(origins));
    }
}

// A bin that another one replaces at no higher price, however many are wanted.
bool Instance::dominated(const Bin& bin) const {
    if (salvages())
        return false;
    return std::any_of(m_bins.begin(), m_bins.end(), [&](const Bin& other) {
        return !other.limited && other.capacity >= bin.capacity && other.price <= bin.price;
    });
}

void Instance::addBins() {
    if (m_widths.empty())
        return;
    const std::int64_t pieces = std::accumulate(m_demand.begin(), m_demand.end(), std::int64_t{0});
    std::vector<Bin> found;
    for (std::size_t s = 0; s < m_problem->sticks.size(); ++s) {
        const Stick& stick = m_problem->sticks[s];
        const std::int64_t usable = stick.length - m_problem->trim + m_problem->kerf;
        const std::int64_t available = std::min(stick.available.value_or(pieces), pieces);
        if (available > 0 && usable / m_factor >= m_widths.back())
            found.push_back({usable / m_factor, stick.price, available,
                stick.available.has_value() && *stick.available < pieces, s});
    }
    std::stable_sort(found.begin(), found.end(), [](const Bin& a, const Bin& b) {
        if (a.capacity != b.capacity)
            return a.capacity > b.capacity;
        if (a.price != b.price)
            return a.price < b.price;
        return !a.limited && b.limited;
    });
    for (const Bin& bin : found) {
        if (dominated(bin))
            continue;
        m_bins.push_back(bin);
        m_priceStep = std::gcd(m_priceStep, bin.price);
    }
    if (salvages())
        m_priceStep = 1;
}

std::int64_t Instance::cost(std::size_t bin, std::int64_t usedWidth) const {
    const Bin& kind = m_bins[bin];
    const Salvage& salvage = m_problem->salvage;
    if (salvage.cents == 0)
        return kind.price;
    const std::int64_t left = m_problem->sticks[kind.origin].length - m_problem->trim
        - usedWidth * m_factor;
    if (left <= 0 || left < salvage.shortest)
        return kind.price;
    const auto worth = static_cast<Wide>(left) * salvage.cents / salvage.perLength;
    return worth < kind.price ? kind.price - static_cast<std::int64_t>(worth) : 0;
}

std::int64_t Instance::width(const Column& column) const {
    std::int64_t sum = 0;
    for (const auto& [kind, count] : column.cuts)
        sum += m_widths[static_cast<std::size_t>(kind)] * count;
    return sum;
}

std::int64_t Instance::remainder(const Column& column) const {
    return m_problem->sticks[m_bins[column.bin].origin].length - m_problem->trim
        - width(column) * m_factor;
}

} // namespace miterbook::packing
