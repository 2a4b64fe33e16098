// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/row_loading.h"

namespace miterbook {

Result<void> loadRows(
    Connection& connection, std::size_t kind, const RowsAsked& asked, RowMap& rows) {
    return TableStore(connection, kind).read(asked, [&](AnyRow&& row) {
        rows.put(row.id(), row.shared());
    });
}

} // namespace miterbook
