// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/one_of.h"
#include "basics/table.h"

#include <tuple>

namespace miterbook {

/// One Table for each of several kinds of row, found by type: tables.of<Opening>().
template <class... Rows>
class Tables {
public:
    template <class Row>
    static constexpr bool holds = isOneOf<Row, Rows...>;

    template <class Row>
    Table<Row>& of() {
        return std::get<Table<Row>>(m_tables);
    }
    template <class Row>
    const Table<Row>& of() const {
        return std::get<Table<Row>>(m_tables);
    }
    /// Calls fn(table) for each table, in order.
    template <class Fn>
    void forEach(Fn&& fn) const {
        std::apply([&](const auto&... table) { (fn(table), ...); }, m_tables);
    }

    bool operator==(const Tables&) const = default;

private:
    std::tuple<Table<Rows>...> m_tables;
};

/// Whether one of several sets of tables holds rows of a kind.
template <class Row, class... Sets>
inline constexpr bool heldByAny = (Sets::template holds<Row> || ...);

} // namespace miterbook
