// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migration.h"

#include "store/book_info.h"
#include "store/new_file.h"
#include "store/sqlite_guard.h"
#include "store/transaction.h"

#include <QFile>
#include <QString>

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
    const std::string& path, int format) {
    const auto copied = makeNewFile(copyBeforeBringingUp(path, format),
        [&](const std::string& part) { return copyInto(connection, part); });
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

std::string copyBeforeBringingUp(const std::string& path, int format) {
    const std::string first = path + ".format-" + std::to_string(format) + ".bak";
    std::string name = first;
    for (int n = 2; QFile::exists(QString::fromStdString(name)); ++n)
        name = first + "-" + std::to_string(n);
    return name;
}

} // namespace miterbook
