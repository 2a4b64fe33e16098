// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/restore.h"

#include "store/book_lock.h"
#include "store/file_header.h"
#include "store/safety/backups.h"
#include "store/safety/disk.h"
#include "store/safety/soundness.h"
#include "store/sqlite_guard.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace miterbook {

namespace {

/// A program that was stopped in the midst of a change left a journal; SQLite takes the change back
/// when the book is opened for writing.
void settle(const std::string& book) {
    auto connection = Connection::open(book, Access::readWrite);
    if (connection && guardConnection(**connection))
        (void)(*connection)->readOne("SELECT count(*) FROM sqlite_schema");
}

/// Bytes as they are, with the journal if one is left.
Result<Backup> keepAsFound(const std::string& book, const Clock& clock) {
    const QDir folder(QString::fromStdString(backupFolder(book)));
    if (!QDir().mkpath(folder.path()))
        return Error{Fault::storage, "The folder for backups cannot be made. Nothing was changed."};
    const std::string at = clock.timestamp();
    std::string path;
    for (int n = 1; path.empty() || QFile::exists(QString::fromStdString(path)); ++n) {
        path = folder.filePath(QString::fromStdString(backupName(at, BackupReason::damaged, n)))
                   .toStdString();
    }
    if (auto copied = copyFile(book, path); !copied)
        return copied.error();
    if (hasJournal(book)) {
        if (auto copied = copyFile(journalOf(book), journalOf(path)); !copied)
            return copied.error();
    }
    (void)syncFolderOf(path);
    return Backup{path, at, BackupReason::damaged, QFileInfo(QString::fromStdString(path)).size()};
}

/// An unfinished change is taken back first, but not before the bytes are safe as they were found.
Result<Backup> keepFormer(const std::string& book, const Clock& clock) {
    if (!hasJournal(book)) {
        auto backup = makeBackup(book, BackupReason::replaced, clock);
        return backup ? backup : keepAsFound(book, clock);
    }
    auto found = keepAsFound(book, clock);
    if (!found)
        return found;
    settle(book);
    auto backup = makeBackup(book, BackupReason::replaced, clock);
    if (!backup)
        return found;
    QFile::remove(QString::fromStdString(found->path));
    QFile::remove(QString::fromStdString(journalOf(found->path)));
    return backup;
}

} // namespace

Result<Replaced> replaceBook(
    const std::string& book, const std::string& source, const Clock& clock) {
    if (auto sound = checkSoundness(source); !sound)
        return sound.error();
    const auto lock = BookLock::take(book);
    if (!lock)
        return lock.error();
    Replaced replaced;
    const QString part = QString::fromStdString(book + ".part");
    QFile::remove(part);
    if (auto copied = copyFile(source, part.toStdString()); !copied)
        return copied.error();
    if (QFile::exists(QString::fromStdString(book))) {
        auto former = keepFormer(book, clock);
        if (!former) {
            QFile::remove(part);
            return former.error();
        }
        replaced.former = *std::move(former);
    }
    // It belongs to the book that goes; SQLite would play it into the one that comes.
    QFile::remove(QString::fromStdString(journalOf(book)));
    if (auto done = replaceFile(part.toStdString(), book); !done) {
        QFile::remove(part);
        return done.error();
    }
    return replaced;
}

} // namespace miterbook
