// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace miterbook {

/// The places of keys in ascending order, equal keys as they stand.
std::vector<std::size_t> steadyOrder(const std::vector<std::int64_t>& keys);

/// Sorts rows by a whole-number key, equal keys as they stand. Places are sorted and not rows: the
/// sorting is then not compiled anew for each kind of row.
template <class Row, class Key>
void sortByKey(std::vector<Row>& rows, Key key) {
    std::vector<std::int64_t> keys;
    keys.reserve(rows.size());
    for (const Row& row : rows)
        keys.push_back(key(row));
    std::vector<Row> sorted;
    sorted.reserve(rows.size());
    for (const std::size_t place : steadyOrder(keys))
        sorted.push_back(std::move(rows[place]));
    rows = std::move(sorted);
}

/// Rows, or pointers to rows, in position order.
template <class Row>
void sortByPosition(std::vector<Row>& rows) {
    sortByKey(rows, [](const auto& row) -> std::int64_t {
        if constexpr (requires { row->position; })
            return row->position;
        else
            return row.position;
    });
}

} // namespace miterbook
