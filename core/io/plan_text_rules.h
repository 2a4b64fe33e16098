// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/overlay.h"

#include <algorithm>
#include <optional>

namespace miterbook {

/// What a plan exchange text says it is, and the newest version that is understood. A change that
/// an older reader would get wrong takes the next number.
inline constexpr std::string_view planTextKind = "plan";
inline constexpr int planTextVersion = 2;

/// The row that a change starts from: the one it names where that is no change itself, else an
/// empty one, so that no change is read before what it starts from.
template <Overlaid Row>
Row changedRow(const Table<Row>& table, Id<Row> id) {
    const Row* row = table.find(id);
    return row && !row->replaces ? *row : Row();
}

/// Where a row stands when the text does not say: a change where the row it changes stands, any
/// other after the one before it; the first of a plan at 1, of a variant after all of the plan's.
template <Overlaid Row>
class PositionRule {
public:
    PositionRule(const Table<Row>& table, Id<Variant> variant) {
        if (!variant)
            return;
        for (const auto& [id, row] : table) {
            if (!row.variant)
                m_last = std::max(m_last, row.position);
        }
    }

    int usual(std::optional<int> changed) const { return changed ? *changed : m_last + 1; }
    void note(const Row& row) {
        if (!row.replaces)
            m_last = row.position;
    }

private:
    int m_last = 0;
};

} // namespace miterbook
