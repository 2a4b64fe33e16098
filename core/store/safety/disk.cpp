// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/disk.h"

#include "store/file_header.h"

#include <QFile>
#include <QFileInfo>

#include <cstdio>

#include <fcntl.h>
#include <unistd.h>

namespace miterbook {

namespace {

Error diskError(const std::string& path, const std::string& what) {
    return {Fault::storage, shownName(path) + " " + what + "."};
}

bool syncPath(const std::string& path, int flags) {
    const int file = ::open(path.c_str(), flags | O_CLOEXEC);
    if (file < 0)
        return false;
    const bool synced = ::fsync(file) == 0;
    ::close(file);
    return synced;
}

} // namespace

Result<void> syncFile(const std::string& path) {
    if (syncPath(path, O_RDONLY))
        return {};
    return diskError(path, "could not be put on the disk");
}

Result<void> syncFolderOf(const std::string& path) {
    const std::string folder = QFileInfo(QString::fromStdString(path)).absolutePath().toStdString();
    // Some network drives cannot sync a folder; the file's own bytes are safe by then.
    (void)syncPath(folder, O_RDONLY | O_DIRECTORY);
    return {};
}

Result<void> copyFile(const std::string& from, const std::string& to) {
    const QString target = QString::fromStdString(to);
    if (QFile::exists(target))
        return diskError(to, "is there already");
    QFile source(QString::fromStdString(from));
    if (!source.copy(target)) {
        const std::string why = source.errorString().toStdString();
        QFile::remove(target);
        return diskError(from, "could not be copied (" + why + ")");
    }
    QFile::setPermissions(target, QFile::permissions(target) | QFile::WriteOwner);
    return syncFile(to);
}

Result<void> replaceFile(const std::string& part, const std::string& path) {
    if (auto synced = syncFile(part); !synced)
        return synced;
    if (std::rename(part.c_str(), path.c_str()) != 0)
        return diskError(path, "could not be replaced");
    return syncFolderOf(path);
}

std::string journalOf(const std::string& path) {
    return path + "-journal";
}

bool hasJournal(const std::string& path) {
    const QFileInfo info(QString::fromStdString(journalOf(path)));
    return info.exists() && info.size() > 0;
}

} // namespace miterbook
