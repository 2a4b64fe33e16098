// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// The rows of one kind, always in memory, as an edit will leave them; by id.
template <class Row>
Table<Row> tableAfter(const Book& book, const Edit& edit) {
    Table<Row> table = book.jobs.of<Row>();
    for (const Change& change : edit.changes) {
        if (!change.row().is<Row>())
            continue;
        if (const Row* after = rowIn<Row>(change.after))
            table.put(*after);
        else
            table.erase(Id<Row>(change.before->id()));
    }
    return table;
}

} // namespace miterbook
