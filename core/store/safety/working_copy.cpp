// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/working_copy.h"

#include "store/safety/disk.h"

#include <QFileInfo>
#include <QTemporaryDir>

namespace miterbook {

WorkingCopy::WorkingCopy(std::unique_ptr<QTemporaryDir> folder, std::string path)
    : m_folder(std::move(folder))
    , m_path(std::move(path)) {
}

WorkingCopy::WorkingCopy(WorkingCopy&&) noexcept = default;
WorkingCopy& WorkingCopy::operator=(WorkingCopy&&) noexcept = default;
WorkingCopy::~WorkingCopy() = default;

Result<WorkingCopy> WorkingCopy::of(const std::string& book, const std::string& near) {
    const QString place = QFileInfo(QString::fromStdString(near)).absolutePath();
    auto folder = std::make_unique<QTemporaryDir>(place + QStringLiteral("/miterbook-copy-XXXXXX"));
    if (!folder->isValid()) {
        return Error{
            Fault::storage, "No copy can be made in the folder \"" + place.toStdString() + "\"."};
    }
    const std::string path = folder->filePath(QStringLiteral("copy.miterbook")).toStdString();
    if (auto copied = copyFile(book, path); !copied)
        return copied.error();
    if (hasJournal(book)) {
        if (auto copied = copyFile(journalOf(book), journalOf(path)); !copied)
            return copied.error();
    }
    return WorkingCopy(std::move(folder), path);
}

} // namespace miterbook
