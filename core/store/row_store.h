// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "plan/plan.h"
#include "store/table_store.h"

#include <optional>

namespace miterbook {

/// The rows of one kind in the book file; all of it follows from Describe<Row>. Made for every kind
/// of AnyRow in row_store.cpp.
template <class Row>
class RowStore {
public:
    explicit RowStore(Connection& connection);

    Result<Table<Row>> all();
    /// Rows below one plan; only for kinds that are below a plan.
    Result<Table<Row>> ofPlan(Id<Plan> plan);
    /// Those that fit a condition in SQL, with a key for each placeholder.
    Result<Table<Row>> where(const std::string& condition, const Cells& keys);
    /// Nothing when there is no such row.
    Result<std::optional<Row>> find(Id<Row> id);
    /// Errors: Fault::conflict when the id is taken.
    Result<void> insert(const Row& row);
    /// Errors: Fault::conflict when the row is not as `before` in the book; so with remove().
    Result<void> update(const Row& before, const Row& after);
    Result<void> remove(const Row& before);

private:
    Result<Table<Row>> select(const std::string& sql, const Cells& keys);
    Result<void> checkHeld(const Row& before);

    TableStore m_store;
};

} // namespace miterbook
