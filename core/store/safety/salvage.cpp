// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/salvage.h"

#include "store/book_info.h"
#include "store/file_header.h"
#include "store/new_file.h"
#include "store/safety/reading.h"
#include "store/safety/salvage_rows.h"
#include "store/safety/salvage_tables.h"
#include "store/safety/soundness.h"
#include "store/safety/working_copy.h"
#include "store/schema.h"
#include "store/sqlite_guard.h"
#include "store/transaction.h"

namespace miterbook {

namespace {

std::vector<SchemaStep> stepsUpTo(int format) {
    std::vector<SchemaStep> steps = schemaSteps();
    std::erase_if(steps, [&](const SchemaStep& step) { return step.number > format; });
    return steps;
}

Result<std::unique_ptr<Connection>> openGuarded(const std::string& path) {
    auto connection = Connection::open(path, Access::readWrite);
    if (!connection)
        return connection;
    if (auto guarded = guardConnection(**connection); !guarded)
        return guarded.error();
    return connection;
}

/// What the damaged book says of itself, as far as it does.
BookInfo infoOf(Connection& from, const Clock& clock) {
    BookInfo info{0, clock.timestamp(), 0};
    if (const auto held = readBookInfo(from))
        info = *held;
    return info;
}

Result<void> fill(
    Connection& from, Connection& to, int format, const Clock& clock, SalvageReport& report) {
    Transaction transaction(to);
    if (auto begun = transaction.begin(); !begun)
        return begun;
    if (auto marked = markAsBook(to); !marked)
        return marked;
    if (auto made = runSteps(to, stepsUpTo(format), 0); !made)
        return made;
    if (auto copied = copyTables(from, to, report); !copied)
        return copied;
    if (auto copied = copyJournal(from, to, clock.timestamp()); !copied)
        return copied;
    if (auto brought = runSteps(to, schemaSteps(), format); !brought)
        return brought;
    BookInfo info = infoOf(from, clock);
    info.format = formatOf(schemaSteps());
    if (auto noted = insertBookInfo(to, info); !noted)
        return noted;
    if (auto mended = mendRows(to, report); !mended)
        return mended;
    if (auto mended = mendReferences(to, report); !mended)
        return mended;
    if (auto closed = closeSalvage(to, clock.timestamp()); !closed)
        return closed;
    return transaction.commit();
}

Result<void> countPapers(const std::string& path, SalvageReport& report) {
    const auto book = openForReading(path);
    if (!book)
        return book.error();
    const auto changed = changedPapers(*book);
    if (!changed)
        return changed.error();
    const auto all = book->connection->readOne("SELECT count(*) FROM issued_paper");
    if (!all)
        return all.error();
    report.papers = all->toLongLong() - std::ssize(*changed);
    return {};
}

Result<void> salvageInto(Connection& from, const std::string& part, int format, const Clock& clock,
    SalvageReport& report) {
    auto to = openGuarded(part);
    if (!to)
        return to.error();
    if (auto filled = fill(from, **to, format, clock, report); !filled)
        return filled;
    if (report.kept + report.restored == 0)
        return Error{Fault::storage, "Nothing of the book could be read. Look into its backups."};
    to->reset();
    return countPapers(part, report);
}

} // namespace

Result<SalvageReport> salvageBook(
    const std::string& book, const std::string& target, const Clock& clock) {
    const auto format = readFileHeader(book, formatOf(schemaSteps()));
    if (!format)
        return format.error();
    auto copy = WorkingCopy::of(book, target);
    if (!copy)
        return copy.error();
    auto from = openGuarded(copy->path());
    if (!from) {
        return Error{from.error().fault,
            from.error().sentence + " Nothing of it can be read; look into its backups."};
    }
    SalvageReport report;
    const auto made = makeNewFile(target,
        [&](const std::string& part) { return salvageInto(**from, part, *format, clock, report); });
    if (!made)
        return made.error();
    from->reset(); // before its folder goes
    return report;
}

} // namespace miterbook
