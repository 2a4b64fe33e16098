// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/edit_writer.h"

#include "store/any_row_store.h"
#include "store/book_info.h"
#include "store/journal.h"
#include "store/references.h"
#include "store/transaction.h"

namespace miterbook {

namespace {

Result<void> writeRows(Connection& connection, const std::string& at, const Edit& edit) {
    for (const Change& change : edit.changes) {
        if (auto written = writeChange(connection, change); !written)
            return written;
    }
    if (auto noted = appendToJournal(connection, at, edit); !noted)
        return noted;
    return raiseLastId(connection, highestId(edit));
}

} // namespace

Result<void> writeEdit(Connection& connection, const std::string& at, const Edit& edit) {
    Transaction transaction(connection);
    if (auto begun = transaction.begin(); !begun)
        return begun;
    if (auto written = writeRows(connection, at, edit); !written)
        return written;
    auto committed = transaction.commit();
    if (!committed && transaction.brokenReference())
        return explainBrokenReference(connection, edit);
    return committed;
}

} // namespace miterbook
