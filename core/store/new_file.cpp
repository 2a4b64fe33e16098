// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/new_file.h"

#include "store/file_header.h"
#include "store/safety/disk.h"

#include <QFile>
#include <QString>

namespace miterbook {

namespace {

void removePart(const QString& part) {
    QFile::remove(part);
    QFile::remove(part + QStringLiteral("-journal"));
}

} // namespace

Result<void> makeNewFile(
    const std::string& path, const std::function<Result<void>(const std::string& part)>& fill) {
    const QString name = QString::fromStdString(path);
    const QString part = name + QStringLiteral(".part");
    if (QFile::exists(name))
        return Error{Fault::storage, "There is a file " + shownName(path) + " already."};
    removePart(part); // left behind by a program that was stopped
    if (auto filled = fill(part.toStdString()); !filled) {
        removePart(part);
        return filled;
    }
    if (auto synced = syncFile(part.toStdString()); !synced) {
        removePart(part);
        return synced;
    }
    if (!QFile::rename(part, name)) { // never over a file that has come up meanwhile
        removePart(part);
        return Error{Fault::storage, shownName(path) + " cannot be made."};
    }
    return syncFolderOf(path);
}

} // namespace miterbook
