// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/words.h"

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// Why a backup was made.
enum class BackupReason { opened, daily, olderFormat, replaced, damaged };

template <>
struct Words<BackupReason> {
    static constexpr std::array list{
        Word{BackupReason::opened, "opened"},     // the book had changed when it was opened
        Word{BackupReason::daily, "daily"},       // first of a day while the book stays open
        Word{BackupReason::olderFormat, "older"}, // before it was brought to a newer format
        Word{BackupReason::replaced, "replaced"}, // before another took its place
        Word{BackupReason::damaged, "damaged"},   // as it was found; cannot be relied upon
    };
};

/// A backup of a book: a whole book of its own in the folder BOOK.backups, named by when and why.
struct Backup {
    std::string path;
    std::string at; ///< UTC, ISO 8601
    BackupReason reason = BackupReason::opened;
    std::int64_t bytes = 0;

    bool operator==(const Backup&) const = default;
};

/// The day of a backup, by its time in UTC.
Date dayOf(const Backup& backup);

/// Where the backups of a book are.
std::string backupFolder(const std::string& book);

/// The file name for a time and reason: "2026-11-26T01-30-12Z-daily.miterbook"; the n-th of the
/// same second has "-n" before the ending.
std::string backupName(std::string_view at, BackupReason reason, int n = 1);

/// What a file name says; nothing for a name that is not of a backup. `path` and `bytes` stay
/// empty.
std::optional<Backup> readBackupName(std::string_view name);

} // namespace miterbook
