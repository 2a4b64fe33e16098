// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/row_map.h"

#include <algorithm>
#include <utility>

namespace miterbook {

RowMap::RowMap() = default;
RowMap::RowMap(const RowMap&) = default;
RowMap::RowMap(RowMap&&) noexcept = default;
RowMap& RowMap::operator=(const RowMap&) = default;
RowMap& RowMap::operator=(RowMap&&) noexcept = default;
RowMap::~RowMap() = default;

const void* RowMap::find(std::int64_t id) const {
    const auto it = m_rows.find(id);
    return it == m_rows.end() ? nullptr : it->second.get();
}

RowMap::Shared RowMap::share(std::int64_t id) const {
    const auto it = m_rows.find(id);
    return it == m_rows.end() ? nullptr : it->second;
}

void RowMap::put(std::int64_t id, Shared row) {
    m_rows.insert_or_assign(id, std::move(row));
}

void RowMap::erase(std::int64_t id) {
    m_rows.erase(id);
}

bool RowMap::equals(const RowMap& other, Same same) const {
    return std::ranges::equal(m_rows, other.m_rows, [same](const auto& a, const auto& b) {
        return a.first == b.first && (a.second == b.second || same(a.second.get(), b.second.get()));
    });
}

} // namespace miterbook
