// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/any_row_store.h"

#include "store/table_store.h"

namespace miterbook {

namespace {

/// Whether the file still holds the row as `before`. Errors: Fault::conflict when it does not.
Result<void> checkHeld(TableStore& store, const AnyRow& before) {
    const auto held = store.find(before.id());
    if (!held)
        return held.error();
    if (*held != before)
        return changedMeanwhile(before.noun());
    return {};
}

} // namespace

Result<std::optional<AnyRow>> findAnyRow(
    Connection& connection, std::string_view table, std::int64_t id) {
    const auto kind = kindOfTable(table);
    if (!kind)
        return std::optional<AnyRow>();
    return TableStore(connection, *kind).find(id);
}

Result<void> writeChange(Connection& connection, const Change& change) {
    const AnyRow& row = change.row();
    TableStore store(connection, row.kind());
    if (!change.before)
        return store.insert(row);
    if (auto held = checkHeld(store, *change.before); !held)
        return held;
    return change.after ? store.update(row) : store.remove(row.id());
}

} // namespace miterbook
