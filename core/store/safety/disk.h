// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <string>

namespace miterbook {

/// Returns once a file's bytes are on the disk and not only on their way there.
Result<void> syncFile(const std::string& path);
/// As syncFile, for the names in the folder of a file: a new name outlives a power loss.
Result<void> syncFolderOf(const std::string& path);

/// Copies the bytes of a file to a new one and syncs it. Errors: `to` is there already, the disk.
Result<void> copyFile(const std::string& from, const std::string& to);
/// Puts `part` in the place of `path`, whatever is there: at every moment there is one of the two.
Result<void> replaceFile(const std::string& part, const std::string& path);

/// Where SQLite keeps what it needs to take back an unfinished change of a file.
std::string journalOf(const std::string& path);
/// Whether a program was stopped in the midst of a change: its journal is still there.
bool hasJournal(const std::string& path);

} // namespace miterbook
