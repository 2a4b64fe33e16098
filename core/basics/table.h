// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/id.h"

#include <map>
#include <utility>

namespace miterbook {

/// The rows of one kind, by id (and so in the order they were made).
template <class Row>
class Table {
public:
    const Row* find(Id<Row> id) const {
        const auto it = m_rows.find(id);
        return it == m_rows.end() ? nullptr : &it->second;
    }
    bool contains(Id<Row> id) const { return m_rows.contains(id); }
    void put(Row row) {
        const Id<Row> id = row.id;
        m_rows.insert_or_assign(id, std::move(row));
    }
    void erase(Id<Row> id) { m_rows.erase(id); }
    bool empty() const { return m_rows.empty(); }
    std::size_t size() const { return m_rows.size(); }

    /// Iterates (id, row) pairs.
    auto begin() const { return m_rows.begin(); }
    auto end() const { return m_rows.end(); }

    bool operator==(const Table&) const = default;

private:
    std::map<Id<Row>, Row> m_rows;
};

} // namespace miterbook
