// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/file_header.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace miterbook {

namespace {

// https://sqlite.org/fileformat.html, "The Database Header": big-endian fields, 100 bytes.
constexpr qsizetype headerSize = 100;
constexpr qsizetype userVersionAt = 60;
constexpr qsizetype applicationIdAt = 68;

Error notOurs(const std::string& path, const std::string& why) {
    return {Fault::notOurs, shownName(path) + " is not a Miterbook book: " + why};
}

Result<QByteArray> firstBytes(const std::string& path) {
    const QString name = QString::fromStdString(path);
    const QFileInfo info(name);
    if (!info.exists())
        return Error{Fault::notFound, "There is no file " + shownName(path) + "."};
    if (!info.isFile())
        return notOurs(path, "it is no file.");
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return Error{Fault::storage,
            shownName(path) + " cannot be read (" + file.errorString().toStdString() + ")."};
    }
    return file.read(headerSize);
}

std::int32_t field(const QByteArray& header, qsizetype at) {
    return qFromBigEndian<qint32>(header.constData() + at);
}

} // namespace

std::string shownName(const std::string& path) {
    return "\"" + QFileInfo(QString::fromStdString(path)).fileName().toStdString() + "\"";
}

Result<int> readFileHeader(const std::string& path, int newest) {
    const auto header = firstBytes(path);
    if (!header)
        return header.error();
    if (header->isEmpty())
        return notOurs(path, "the file is empty.");
    if (header->size() < headerSize || !header->startsWith(QByteArray("SQLite format 3\0", 16)))
        return notOurs(path, "it is another kind of file.");
    if (field(*header, applicationIdAt) != bookFileMark)
        return notOurs(path, "it is a database of another program.");
    const int format = field(*header, userVersionAt);
    if (format > newest) {
        return Error{Fault::notOurs,
            shownName(path) + " was written by a newer version of Miterbook (format "
                + std::to_string(format) + "; this one reads up to " + std::to_string(newest)
                + "). It was left as it is."};
    }
    if (format < 1)
        return notOurs(path, "it was never finished.");
    return format;
}

} // namespace miterbook
