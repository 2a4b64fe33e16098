// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"
#include "store/table_store.h"

#include <functional>
#include <string>
#include <vector>

namespace miterbook {

/// What could not be read of a table.
struct Gaps {
    std::int64_t ids = 0; ///< so many keys lead to damage; not each of them had a row
};

/// Reads the rows of a table by their whole-number key, going round what is damaged: a stretch that
/// fails is halved until its sound rows are out, so they come in no order. `columns` are SQL, the
/// key the first of them; `take` gets a cell for each. Errors: the table cannot be read at all.
Result<Gaps> scanAround(Connection& connection, const std::string& table,
    const std::vector<std::string>& columns, const std::function<void(const Cells&)>& take);

} // namespace miterbook
