// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <memory>

namespace miterbook {

/// Rows of one kind by id, without their type: what a Table holds. Rows are shared and do not
/// change, so a copy of a whole book copies no row; whoever changes a row puts another in its
/// place.
class RowMap {
public:
    using Shared = std::shared_ptr<const void>;
    using Iterator = std::map<std::int64_t, Shared>::const_iterator;
    /// Whether two rows of the kind say the same.
    using Same = bool (*)(const void*, const void*);

    RowMap();
    RowMap(const RowMap&);
    RowMap(RowMap&&) noexcept;
    RowMap& operator=(const RowMap&);
    RowMap& operator=(RowMap&&) noexcept;
    ~RowMap();

    /// The row of an id; nullptr when there is none.
    const void* find(std::int64_t id) const;
    Shared share(std::int64_t id) const;
    void put(std::int64_t id, Shared row);
    void erase(std::int64_t id);
    bool empty() const { return m_rows.empty(); }
    std::size_t size() const { return m_rows.size(); }
    Iterator begin() const { return m_rows.begin(); }
    Iterator end() const { return m_rows.end(); }

    /// Whether both hold the same ids with rows that say the same.
    bool equals(const RowMap& other, Same same) const;

private:
    std::map<std::int64_t, Shared> m_rows;
};

} // namespace miterbook
