// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/file_bytes.h"

#include <QFile>
#include <QFileInfo>

namespace miterbook {

Result<std::string> readFileBytes(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (QFileInfo(file).isDir())
        return Error{Fault::storage, path + " is a folder, not a file."};
    if (!file.open(QIODevice::ReadOnly))
        return Error{
            Fault::storage, path + " could not be read: " + file.errorString().toStdString() + "."};
    // Read one byte past the limit instead of asking for the size: pipes have none.
    const QByteArray bytes = file.read(largestTextFile + 1);
    if (file.error() != QFileDevice::NoError)
        return Error{
            Fault::storage, path + " could not be read: " + file.errorString().toStdString() + "."};
    if (bytes.size() > largestTextFile)
        return badInput(path + " is larger than 16 MB; no schedule or plan is.");
    return bytes.toStdString();
}

std::string fileName(const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).fileName().toStdString();
}

} // namespace miterbook
