// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/snapshot_copy.h"

#include "store/file_header.h"
#include "store/sql_error.h"
#include "store/sqlite_guard.h"

#include <memory>

#include <sqlite3.h>

namespace miterbook {

namespace {

struct CloseHandle {
    void operator()(sqlite3* handle) const { sqlite3_close(handle); }
};

struct EndBackup {
    void operator()(sqlite3_backup* backup) const { sqlite3_backup_finish(backup); }
};

using Handle = std::unique_ptr<sqlite3, CloseHandle>;
using Stepper = std::unique_ptr<sqlite3_backup, EndBackup>;

Error failed(sqlite3* handle) {
    return sqliteError(sqlite3_extended_errcode(handle), sqlite3_errmsg(handle));
}

/// Pages at a time: about a millisecond, so that nobody who types waits for it.
constexpr int pagesAtOnce = 256;
constexpr int pauseWhenBusy = 20; // milliseconds
constexpr int mostPauses = 500;

Result<void> stepThrough(sqlite3_backup* backup, sqlite3* target, const GoOn& goOn) {
    for (int pauses = 0; pauses < mostPauses;) {
        if (goOn && !goOn())
            return Error{Fault::cancelled, "The copy was stopped."};
        const int code = sqlite3_backup_step(backup, pagesAtOnce);
        if (code == SQLITE_DONE)
            return {};
        if (code == SQLITE_BUSY || code == SQLITE_LOCKED) {
            sqlite3_sleep(pauseWhenBusy);
            ++pauses;
        } else if (code != SQLITE_OK) {
            return sqliteError(code, sqlite3_errmsg(target));
        }
    }
    return sqliteError(SQLITE_BUSY, "");
}

} // namespace

Result<void> copyInSteps(Connection& from, const std::string& to, const GoOn& goOn) {
    sqlite3* source = handleOf(from);
    sqlite3* opened = nullptr;
    const int code = sqlite3_open_v2(
        to.c_str(), &opened, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    const Handle target(opened);
    if (code != SQLITE_OK || !source)
        return sqliteError(code, opened ? sqlite3_errmsg(opened) : shownName(to));
    const Stepper backup(sqlite3_backup_init(opened, "main", source, "main"));
    if (!backup)
        return failed(opened);
    return stepThrough(backup.get(), opened, goOn);
}

} // namespace miterbook
