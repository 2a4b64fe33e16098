// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/backup_name.h"
#include "store/safety/reading.h"
#include "store/safety/retention.h"
#include "store/safety/snapshot_copy.h"

#include <vector>

namespace miterbook {

/// The backups of a book that are there, latest first. A folder that is not there has none.
std::vector<Backup> backupsOf(const std::string& book);

/// Copies the book into its folder of backups and looks the copy over, every page and every issued
/// paper. The book may be in use meanwhile, by this program too. Errors: the book or the copy is
/// damaged, the disk is full or nearly; then there is no new backup.
Result<Backup> makeBackup(
    const std::string& book, BackupReason reason, const Clock& clock, const GoOn& goOn = {});

/// As makeBackup, through an open connection and without looking the copy over: a book that is
/// older or damaged is kept as it is.
Result<Backup> backUpFrom(Connection& connection, const std::string& book, BackupReason reason,
    const Clock& clock, const GoOn& goOn = {});

/// A backup if one is due: for `opened` when the book has changed since the latest one that can be
/// read, for `daily` when moreover that is not of today. Then lets old ones go. Value: the new one.
Result<std::optional<Backup>> backUpIfDue(const std::string& book, BackupReason reason,
    const Clock& clock, const Retention& retention = {}, const GoOn& goOn = {});

} // namespace miterbook
