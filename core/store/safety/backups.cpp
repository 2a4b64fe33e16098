// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/backups.h"

#include "store/file_header.h"
#include "store/new_file.h"
#include "store/safety/soundness.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStorageInfo>

#include <algorithm>

namespace miterbook {

namespace {

QString folderOf(const std::string& book) {
    return QString::fromStdString(backupFolder(book));
}

/// A name that is free in the folder.
std::string freeName(const QDir& folder, std::string_view at, BackupReason reason) {
    for (int n = 1;; ++n) {
        const std::string name = backupName(at, reason, n);
        const QString path = folder.filePath(QString::fromStdString(name));
        if (!QFile::exists(path))
            return path.toStdString();
    }
}

Result<void> checkRoom(const std::string& book, const QDir& folder) {
    constexpr qint64 reserve = 32 * 1024 * 1024; // for the book itself to go on
    const qint64 wanted = QFileInfo(QString::fromStdString(book)).size() + reserve;
    const QStorageInfo disk(folder);
    if (!disk.isValid() || disk.bytesAvailable() >= wanted)
        return {};
    return Error{Fault::storage,
        "There is too little room on the disk for a backup of " + shownName(book)
            + ". Make room soon."};
}

Result<QDir> madeFolder(const std::string& book) {
    const QString path = folderOf(book);
    if (!QDir().mkpath(path)) {
        return Error{Fault::storage,
            "The folder for backups, " + shownName(path.toStdString()) + ", cannot be made."};
    }
    return QDir(path);
}

/// The latest backup that can be read, with what it holds.
std::optional<std::pair<Backup, BookSummary>> latestReadable(const std::string& book) {
    for (const Backup& backup : backupsOf(book)) {
        if (backup.reason == BackupReason::damaged)
            continue;
        if (auto summary = readSummary(backup.path))
            return std::pair(backup, *std::move(summary));
    }
    return std::nullopt;
}

bool isDue(
    const std::string& book, const BookSummary& now, BackupReason reason, const Clock& clock) {
    const auto latest = latestReadable(book);
    if (!latest)
        return true;
    const auto& [backup, then] = *latest;
    if (then == now)
        return false;
    return reason != BackupReason::daily
        || backup.at.substr(0, 10) != clock.timestamp().substr(0, 10);
}

using Fill = std::function<Result<void>(const std::string& part)>;

Result<Backup> backUpWith(
    const std::string& book, BackupReason reason, const Clock& clock, const Fill& fill) {
    const auto folder = madeFolder(book);
    if (!folder)
        return folder.error();
    if (auto room = checkRoom(book, *folder); !room)
        return room.error();
    const std::string at = clock.timestamp();
    const std::string path = freeName(*folder, at, reason);
    if (auto made = makeNewFile(path, fill); !made)
        return made.error();
    return Backup{path, at, reason, QFileInfo(QString::fromStdString(path)).size()};
}

void letOldOnesGo(const std::string& book, const Retention& retention) {
    for (const Backup& backup : toLetGo(backupsOf(book), retention))
        QFile::remove(QString::fromStdString(backup.path));
}

} // namespace

std::vector<Backup> backupsOf(const std::string& book) {
    std::vector<Backup> backups;
    const QDir folder(folderOf(book));
    for (const QFileInfo& info : folder.entryInfoList(QDir::Files)) {
        auto backup = readBackupName(info.fileName().toStdString());
        if (!backup)
            continue;
        backup->path = info.filePath().toStdString();
        backup->bytes = info.size();
        backups.push_back(*std::move(backup));
    }
    std::ranges::sort(backups, [](const Backup& a, const Backup& b) {
        return std::pair(a.at, a.path) > std::pair(b.at, b.path);
    });
    return backups;
}

Result<Backup> makeBackup(
    const std::string& book, BackupReason reason, const Clock& clock, const GoOn& goOn) {
    auto reading = openForReading(book);
    if (!reading)
        return reading.error();
    return backUpWith(book, reason, clock, [&](const std::string& part) -> Result<void> {
        if (auto copied = copyInSteps(*reading->connection, part, goOn); !copied)
            return copied;
        return checkSoundness(part);
    });
}

Result<Backup> backUpFrom(Connection& connection, const std::string& book, BackupReason reason,
    const Clock& clock, const GoOn& goOn) {
    return backUpWith(book, reason, clock,
        [&](const std::string& part) { return copyInSteps(connection, part, goOn); });
}

Result<std::optional<Backup>> backUpIfDue(const std::string& book, BackupReason reason,
    const Clock& clock, const Retention& retention, const GoOn& goOn) {
    const auto now = readSummary(book);
    if (!now)
        return now.error();
    if (!isDue(book, *now, reason, clock))
        return std::optional<Backup>();
    auto made = makeBackup(book, reason, clock, goOn);
    if (!made)
        return made.error();
    letOldOnesGo(book, retention);
    return std::optional<Backup>(*std::move(made));
}

} // namespace miterbook
