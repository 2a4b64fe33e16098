// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/book_lock.h"

#include "store/file_header.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLockFile>
#include <QSysInfo>

namespace miterbook {

namespace {

/// The lock's path; the same however the book's path is spelled. The book need not be there yet.
QString lockPath(const std::string& path) {
    const QFileInfo info(QString::fromStdString(path));
    if (info.exists())
        return info.canonicalFilePath() + QStringLiteral(".lock");
    return info.dir().canonicalPath() + QLatin1Char('/') + info.fileName()
        + QStringLiteral(".lock");
}

/// "miterbook of anna on bench-2 since 2026-11-26 07:15 (process 4711)".
QString holder(const QLockFile& file) {
    qint64 process = 0;
    QString host;
    QString program;
    file.getLockInfo(&process, &host, &program);
    const QFileInfo info(file.fileName());
    QString text = program.isEmpty() ? QStringLiteral("another program") : program;
    if (const QString user = info.owner(); !user.isEmpty())
        text += QStringLiteral(" of ") + user;
    if (!host.isEmpty())
        text += QStringLiteral(" on ") + host;
    if (const QDateTime since = info.lastModified(); since.isValid())
        text += QStringLiteral(" since ") + since.toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    return text + QStringLiteral(" (process %1)").arg(process);
}

/// A program of another machine cannot be asked whether it is still there.
std::string wayOut(const QLockFile& file) {
    qint64 process = 0;
    QString host;
    QString program;
    file.getLockInfo(&process, &host, &program);
    if (host.isEmpty() || host == QSysInfo::machineHostName())
        return " It can be opened for looking only.";
    return " It can be opened for looking only. If that program has stopped for good, remove the "
           "file "
        + shownName(file.fileName().toStdString()) + ".";
}

} // namespace

BookLock::BookLock(std::unique_ptr<QLockFile> file)
    : m_file(std::move(file)) {
}

BookLock::~BookLock() = default;

Result<std::unique_ptr<BookLock>> BookLock::take(const std::string& path) {
    const QFileInfo info(QString::fromStdString(path));
    if (!info.dir().exists()) {
        return Error{Fault::notFound, "There is no folder \"" + info.path().toStdString() + "\"."};
    }
    auto file = std::make_unique<QLockFile>(lockPath(path));
    file->setStaleLockTime(0); // stale only when its program is gone, however long it has run
    if (file->tryLock(0))
        return std::unique_ptr<BookLock>(new BookLock(std::move(file)));
    if (file->error() == QLockFile::LockFailedError) {
        return Error{Fault::conflict,
            shownName(path) + " is held by " + holder(*file).toStdString() + "." + wayOut(*file)};
    }
    if (!info.exists())
        return Error{Fault::storage, shownName(path) + " cannot be made: its folder is read-only."};
    return Error{Fault::storage,
        shownName(path)
            + " cannot be changed: its folder is read-only. It can be opened for looking only."};
}

} // namespace miterbook
