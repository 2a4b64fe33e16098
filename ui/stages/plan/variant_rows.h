// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/steady_order.h"
#include "job/remove_opening.h"
#include "widgets/table_spec.h"

#include <algorithm>
#include <map>
#include <vector>

namespace miterbook {

/// Where changes of a plan go: into the base plan, or into one of its elevations and options.
struct EditTarget {
    Id<Plan> plan;
    Id<Variant> variant; ///< none: the base plan

    bool operator==(const EditTarget&) const = default;
};

/// The rows to be shown for a target, in position order: the base plan's; with a variant also its
/// own, a changed row in place of the base row, and a removed one still there and marked.
template <Overlaid Row>
std::vector<Row> shownRows(const Table<Row>& table, Id<Variant> variant) {
    std::map<Id<Row>, const Row*> instead;
    std::vector<Row> rows;
    for (const auto& [id, row] : table) {
        if (variant && row.variant == variant && row.replaces)
            instead[row.replaces] = &row;
    }
    for (const auto& [id, row] : table) {
        if (row.variant && row.variant != variant)
            continue;
        if (row.variant && row.replaces)
            continue; // shown where the base row stands
        const auto it = instead.find(id);
        rows.push_back(it == instead.end() ? row : *it->second);
        if (it != instead.end() && it->second->removed) {
            rows.back() = row; // a removal may hold nothing but what it removes
            rows.back().id = it->second->id;
            rows.back().variant = variant;
            rows.back().replaces = id;
            rows.back().removed = true;
        }
    }
    sortByPosition(rows);
    return rows;
}

template <Overlaid Row>
RowMark markOfRow(const Row& row) {
    if (row.removed)
        return RowMark::removed;
    if (!row.variant)
        return RowMark::plain;
    return row.replaces ? RowMark::changed : RowMark::added;
}

/// A row and the one a variant puts in its place are the same row on the screen.
template <Overlaid Row>
std::int64_t rowKey(const Row& row) {
    return row.replaces ? row.replaces.value() : row.id.value();
}

/// Keeps a typed row: in the base plan, or as the variant's own change or addition.
template <Overlaid Row>
void storeRow(EditBuilder& edit, IdSource& ids, const EditTarget& target, Row row) {
    if (!row.id) {
        row.id = ids.next<Row>();
        row.variant = target.variant;
    } else if (target.variant && !row.variant) {
        row.replaces = row.id;
        row.id = ids.next<Row>();
        row.variant = target.variant;
    }
    edit.put(std::move(row));
}

/// Takes a row away from the target: a base row in a variant stays in the base plan.
template <Overlaid Row>
void removeRow(EditBuilder& edit, IdSource& ids, const EditTarget& target, Row row) {
    const bool inBase = !row.variant || row.replaces;
    if (!target.variant || !inBase) {
        removeWithMeasures(edit, row.id);
        return;
    }
    row.removed = true;
    storeRow(edit, ids, target, std::move(row));
}

/// Undoes what a variant does to a row: it is as in the base plan again.
template <Overlaid Row>
void restoreRow(EditBuilder& edit, const Row& row) {
    if (row.variant && row.replaces)
        edit.remove(row.id);
}

/// The position after the last row, whatever its variant.
template <Overlaid Row>
int nextPosition(const Table<Row>& table) {
    int last = 0;
    for (const auto& [id, row] : table)
        last = std::max(last, row.position);
    return last + 1;
}

} // namespace miterbook
