// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"
#include "basics/money.h"
#include "bid/share_out.h"
#include "book/piece_of_work.h"

#include <array>
#include <cstddef>

namespace miterbook {

inline constexpr std::size_t workCount = Words<PieceOfWork>::list.size();

/// The halves of a piece of work: what is priced by its cost (all of it, unless the bid goes by
/// piece prices), and what the shop's piece prices cover.
enum class Half { byCost, byPiece };

/// An amount for each half of each piece of work, in piece of work order.
template <class T>
class PerWork {
public:
    T& at(PieceOfWork work, Half half) { return m_values[slot(work, half)]; }
    const T& at(PieceOfWork work, Half half) const { return m_values[slot(work, half)]; }
    T of(PieceOfWork work) const { return at(work, Half::byCost) + at(work, Half::byPiece); }
    T sum() const {
        T total{};
        for (const T& value : m_values)
            total += value;
        return total;
    }

    auto begin() { return m_values.begin(); }
    auto end() { return m_values.end(); }
    auto begin() const { return m_values.begin(); }
    auto end() const { return m_values.end(); }

    PerWork& operator+=(const PerWork& other) {
        for (std::size_t i = 0; i < m_values.size(); ++i)
            m_values[i] += other.m_values[i];
        return *this;
    }

private:
    static std::size_t slot(PieceOfWork work, Half half) {
        return static_cast<std::size_t>(work) * 2 + static_cast<std::size_t>(half);
    }

    std::array<T, workCount * 2> m_values{};
};

/// Splits an amount over the slots in proportion to weights, to the cent.
PerWork<Money> shareOut(Money amount, const PerWork<Money>& weights);
PerWork<Money> shareOut(Money amount, const PerWork<Length>& weights);

} // namespace miterbook
