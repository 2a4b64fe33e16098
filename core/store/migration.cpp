// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migration.h"

#include "store/book_info.h"
#include "store/safety/backups.h"
#include "store/sqlite_guard.h"
#include "store/transaction.h"

namespace miterbook {

Result<void> makeTables(
    Connection& connection, const std::vector<SchemaStep>& steps, const Clock& clock) {
    Transaction transaction(connection);
    if (auto begun = transaction.begin(); !begun)
        return begun;
    if (auto marked = markAsBook(connection); !marked)
        return marked;
    if (auto ran = runSteps(connection, steps, 0); !ran)
        return ran;
    const BookInfo info{formatOf(steps), clock.timestamp(), 0};
    if (auto written = insertBookInfo(connection, info); !written)
        return written;
    return transaction.commit();
}

Result<void> bringUp(Connection& connection, const std::vector<SchemaStep>& steps,
    const std::string& path, int format, const Clock& clock) {
    const auto copied = backUpFrom(connection, path, BackupReason::olderFormat, clock);
    if (!copied)
        return copied.error();
    Transaction transaction(connection);
    if (auto begun = transaction.begin(); !begun)
        return begun;
    if (auto ran = runSteps(connection, steps, format); !ran)
        return ran;
    if (auto noted = writeFormat(connection, formatOf(steps)); !noted)
        return noted;
    return transaction.commit();
}

} // namespace miterbook
