// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/id.h"
#include "basics/row_map.h"

#include <cstddef>
#include <iterator>
#include <memory>
#include <utility>

namespace miterbook {

/// The rows of one kind, by id (and so in the order they were made). A pointer to a row holds until
/// another row is put in its place.
template <class Row>
class Table {
public:
    /// Steps through (id, row) pairs.
    class Iterator {
    public:
        using value_type = std::pair<Id<Row>, const Row&>;
        using reference = value_type;
        using difference_type = std::ptrdiff_t;
        /// Pairs are made as they are asked for, which older algorithms (std::prev) do not mind.
        using iterator_category = std::bidirectional_iterator_tag;
        using iterator_concept = std::bidirectional_iterator_tag;
        /// Keeps a pair alive for the length of `it->second`.
        struct Arrow {
            value_type pair;
            const value_type* operator->() const { return &pair; }
        };

        Iterator() = default;
        explicit Iterator(RowMap::Iterator at)
            : m_at(at) {}

        value_type operator*() const {
            return {Id<Row>(m_at->first), *static_cast<const Row*>(m_at->second.get())};
        }
        Arrow operator->() const { return {**this}; }
        Iterator& operator++() {
            ++m_at;
            return *this;
        }
        Iterator operator++(int) {
            Iterator old = *this;
            ++m_at;
            return old;
        }
        Iterator& operator--() {
            --m_at;
            return *this;
        }
        Iterator operator--(int) {
            Iterator old = *this;
            --m_at;
            return old;
        }
        bool operator==(const Iterator&) const = default;

    private:
        RowMap::Iterator m_at;
    };

    const Row* find(Id<Row> id) const { return static_cast<const Row*>(m_rows.find(id.value())); }
    bool contains(Id<Row> id) const { return m_rows.find(id.value()) != nullptr; }
    void put(Row row) {
        const Id<Row> id = row.id;
        m_rows.put(id.value(), std::make_shared<const Row>(std::move(row)));
    }
    void erase(Id<Row> id) { m_rows.erase(id.value()); }
    bool empty() const { return m_rows.empty(); }
    std::size_t size() const { return m_rows.size(); }

    Iterator begin() const { return Iterator(m_rows.begin()); }
    Iterator end() const { return Iterator(m_rows.end()); }

    /// The same rows without their type; whoever puts one in puts a Row.
    const RowMap& rows() const { return m_rows; }
    RowMap& rows() { return m_rows; }

    bool operator==(const Table& other) const {
        return m_rows.equals(other.m_rows, [](const void* a, const void* b) {
            return *static_cast<const Row*>(a) == *static_cast<const Row*>(b);
        });
    }

private:
    RowMap m_rows;
};

} // namespace miterbook
