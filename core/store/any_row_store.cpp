// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/any_row_store.h"

#include "store/table_store.h"

namespace miterbook {

namespace {

/// Whether the file still holds the row as `before`. Errors: Fault::conflict when it does not.
Result<void> checkHeld(TableStore& store, const AnyRow& before) {
    auto held = emptyRow(tableName(before));
    const auto found = store.readOne(idOf(before), dataOf(*held));
    if (!found)
        return found.error();
    if (!*found || !sameContent(*held, before))
        return changedMeanwhile(nounOf(before));
    return {};
}

} // namespace

Result<std::optional<AnyRow>> findAnyRow(
    Connection& connection, std::string_view table, std::int64_t id) {
    auto row = emptyRow(table);
    if (!row)
        return std::optional<AnyRow>();
    const auto found = TableStore(connection, tableShape(shapeOf(*row))).readOne(id, dataOf(*row));
    if (!found)
        return found.error();
    if (!*found)
        row.reset();
    return row;
}

Result<void> writeChange(Connection& connection, const Change& change) {
    const AnyRow& row = change.row();
    TableStore store(connection, tableShape(shapeOf(row)));
    if (!change.before)
        return store.insert(dataOf(row));
    if (auto held = checkHeld(store, *change.before); !held)
        return held;
    return change.after ? store.update(dataOf(row), idOf(row)) : store.remove(idOf(row));
}

} // namespace miterbook
