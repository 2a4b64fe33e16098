// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace miterbook {

/// A backup as the list shows it.
struct BackupLine {
    QString path;
    QString when;  ///< in the machine's own time
    QString why;   ///< "of the day"
    QString holds; ///< "14 houses, 3 plans; last change …"
    QString size;
    bool readable = true;
};

/// What keeps a book from being lost, as far as the windows need it. Every error is one sentence.
class SafetyServices {
public:
    virtual ~SafetyServices() = default;

    /// The backups of the book on the desk, latest first.
    virtual std::vector<BackupLine> backups() const = 0;
    /// Puts a backup in the place of the book: the present window closes, and another opens on it.
    /// An error is said in that window.
    virtual void restoreBackup(const QString& path) = 0;
    /// Writes the book as it is to a new file.
    virtual Result<void> writeSnapshot(const QString& path) = 0;
    /// As restoreBackup, if the snapshot has all that the book has and more.
    virtual void takeInSnapshot(const QString& path) = 0;
    /// What a thorough look at the book has found, one sentence each; none for a sound book.
    virtual Result<QStringList> checkBook() = 0;
};

} // namespace miterbook
