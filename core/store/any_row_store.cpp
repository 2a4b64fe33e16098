// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/any_row_store.h"

#include "store/row_store.h"

namespace miterbook {

Result<std::optional<AnyRow>> findAnyRow(
    Connection& connection, std::string_view table, std::int64_t id) {
    Result<std::optional<AnyRow>> result = std::optional<AnyRow>();
    forEachRowKind([&]<class Row>(RowKind<Row>) {
        if (Describe<Row>::table != table)
            return;
        auto row = RowStore<Row>(connection).find(Id<Row>(id));
        if (!row)
            result = row.error();
        else if (*row)
            result = std::optional<AnyRow>(**row);
    });
    return result;
}

Result<void> writeChange(Connection& connection, const Change& change) {
    return std::visit(
        [&](const auto& row) -> Result<void> {
            using Row = std::remove_cvref_t<decltype(row)>;
            RowStore<Row> store(connection);
            if (!change.before)
                return store.insert(row);
            const Row& before = std::get<Row>(*change.before);
            return change.after ? store.update(before, row) : store.remove(before);
        },
        change.row());
}

} // namespace miterbook
