// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/book_file.h"

#include "job/whole_edit.h"
#include "store/book_lock.h"
#include "store/connection.h"
#include "store/edit_writer.h"
#include "store/file_header.h"
#include "store/migration.h"
#include "store/new_file.h"
#include "store/sqlite_guard.h"

#include <QFile>

namespace miterbook {

namespace {

using OpenedBook = Result<std::unique_ptr<BookKeeper>>;

/// SQLite opens a read-only file without a word and fails at the first write; so ask before.
Result<void> checkWritable(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (file.open(QIODevice::ReadWrite))
        return {};
    return Error{Fault::storage,
        shownName(path)
            + " cannot be changed: the file is read-only. It can be opened for looking only."};
}

Result<std::unique_ptr<BookLock>> lockFor(const std::string& path, OpenMode mode) {
    if (mode == OpenMode::look)
        return std::unique_ptr<BookLock>();
    if (auto writable = checkWritable(path); !writable)
        return writable.error();
    return BookLock::take(path);
}

/// The format as SQLite has it. An unfinished change of format may still stand in the file's header
/// when a journal beside it takes it back, and that is done by the first reading.
Result<int> formatHeld(Connection& connection) {
    const auto held = connection.readOne("PRAGMA user_version");
    if (!held)
        return held.error();
    return held->toInt();
}

/// A connection to a file that has been seen to be a book, checked and brought up.
Result<std::unique_ptr<Connection>> connect(const std::vector<SchemaStep>& steps,
    const std::string& path, OpenMode mode, const StoreOptions& options) {
    const Access access = mode == OpenMode::look ? Access::readOnly : Access::readWrite;
    auto connection = Connection::open(path, access, options.permit);
    if (!connection)
        return connection;
    if (auto guarded = guardConnection(**connection); !guarded)
        return guarded.error();
    const auto format = formatHeld(**connection);
    if (!format)
        return format.error();
    if (auto ours = checkSchema(**connection, steps, *format); !ours)
        return ours.error();
    if (*format == formatOf(steps))
        return connection;
    if (mode == OpenMode::look) {
        return Error{Fault::storage,
            shownName(path)
                + " has an older format. Open it for writing once to bring it up to date."};
    }
    if (auto brought = bringUp(**connection, steps, path, *format, clockOf(options)); !brought)
        return brought.error();
    return connection;
}

OpenedBook open(const std::vector<SchemaStep>& steps, const std::string& path,
    std::unique_ptr<BookLock> lock, const StoreOptions& options) {
    const OpenMode mode = lock ? OpenMode::write : OpenMode::look;
    // Read again under the lock: another program may have brought the book up meanwhile.
    if (auto format = readFileHeader(path, formatOf(steps)); !format)
        return format.error();
    auto connection = connect(steps, path, mode, options);
    if (!connection)
        return connection.error();
    return std::make_unique<BookKeeper>(
        path, std::move(connection).value(), std::move(lock), options);
}

/// Writes the schema and the starter's rows into a new file.
Result<void> fillNewBook(
    const std::string& path, const Book& starter, const StoreOptions& options) {
    auto opened = Connection::open(path, Access::readWrite, options.permit);
    if (!opened)
        return opened.error();
    Connection& connection = **opened;
    if (auto guarded = guardConnection(connection); !guarded)
        return guarded;
    const Clock& clock = clockOf(options);
    if (auto made = makeTables(connection, schemaSteps(), clock); !made)
        return made;
    return writeEdit(connection, clock.timestamp(), wholeEdit(starter, "Begin the book"));
}

} // namespace

OpenedBook createBook(const std::string& path, const Book& starter, const StoreOptions& options) {
    auto lock = BookLock::take(path);
    if (!lock)
        return lock.error();
    auto made = makeNewFile(
        path, [&](const std::string& part) { return fillNewBook(part, starter, options); });
    if (!made)
        return made.error();
    return open(schemaSteps(), path, std::move(lock).value(), options);
}

OpenedBook openBook(const std::string& path, OpenMode mode, const StoreOptions& options) {
    return openBookWith(schemaSteps(), path, mode, options);
}

OpenedBook openBookWith(const std::vector<SchemaStep>& steps, const std::string& path,
    OpenMode mode, const StoreOptions& options) {
    if (auto format = readFileHeader(path, formatOf(steps)); !format)
        return format.error();
    auto lock = lockFor(path, mode);
    if (!lock)
        return lock.error();
    return open(steps, path, std::move(lock).value(), options);
}

} // namespace miterbook
