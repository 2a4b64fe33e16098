// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fails at the n-th operation, for every n and every way of failing.
#include "durability/bar.h"
#include "durability/edit_try.h"
#include "store/safety/backups.h"
#include "store/safety/old_book.h"

#include <filesystem>

namespace miterbook {

namespace {

std::string faultAt(DiskFault fault, int n) {
    return "fault " + std::to_string(static_cast<int>(fault)) + " at operation " + std::to_string(n)
        + ": ";
}

/// What one failing operation has left. An answer "done" must be the new book, a refusal the old
/// one; only where the disk removed the journal and said it had not may a refusal be the new one.
void judgeEdit(Bar& bar, EditTry& edit, DiskFault fault, int n, const Result<void>& done) {
    const std::string where = faultAt(fault, n);
    if (!done && done.error().sentence.empty())
        bar.lose(where + "no sentence");
    if (!edit.memoryFits(done.ok()))
        bar.lose(where + "memory is neither the old nor the new book");
    edit.close();
    const std::string found = edit.found();
    const bool right = found == (done ? "new" : "old")
        || (!done && fault == DiskFault::removeUnsaid && found == "new");
    if (!right)
        bar.lose(where + (done ? "done, but " : "refused, but ") + found);
}

/// Works with one failing operation after the other until none is left that fails.
template <class Once>
void tryEach(Bar& bar, DiskUnderTest& disk, Once once, int every = 1) {
    for (const DiskFault fault : diskFaults) {
        for (int n = 1;; n += every) {
            const bool failed = once(disk, fault, n);
            if (!failed)
                break;
            ++bar.tried;
        }
    }
}

} // namespace

Bar editFaultBar() {
    Bar bar{"a write, sync, cut or removal of an edit fails", 40, 0, {}, {}};
    DiskUnderTest disk;
    EditTry edit;
    tryEach(bar, disk, [&](DiskUnderTest& bad, DiskFault fault, int n) {
        if (!edit.begin(bar))
            return false;
        bad.failAt(n, fault);
        const auto done = edit.perform();
        const bool failed = bad.failed();
        bad.heal();
        judgeEdit(bar, edit, fault, n, done);
        return failed;
    });
    return bar;
}

Bar formatFaultBar(int every) {
    Bar bar{"likewise of bringing up a book of format 1", 400 / every, 0, {}, {}};
    BookFolder folder;
    writeOldBook(folder.book(), 1);
    const std::string old = bytesOf(folder.book());
    DiskUnderTest disk;
    tryEach(
        bar, disk,
        [&](DiskUnderTest& bad, DiskFault fault, int n) {
            std::filesystem::remove_all(backupFolder(folder.book()));
            std::filesystem::remove(folder.book() + "-journal");
            writeBytes(folder.book(), old);
            bad.failAt(n, fault);
            const bool opened = openBook(folder.book(), OpenMode::write).ok();
            const bool failed = bad.failed();
            bad.heal();
            if (failed && opened && fault != DiskFault::removeUnsaid)
                bar.note = "a fault that SQLite mends by itself was met";
            auto keeper = openBook(folder.book(), OpenMode::write);
            if (!keeper)
                bar.lose(faultAt(fault, n) + keeper.error().sentence);
            else if (const auto book = loadWhole(**keeper); !book || *book != smallBook())
                bar.lose(faultAt(fault, n) + "the book is not what it was");
            return failed;
        },
        every);
    return bar;
}

Bar backupFaultBar() {
    Bar bar{"likewise of a backup", 60, 0, {}, {}};
    BookFolder folder;
    (void)createBook(folder.book(), smallBook());
    const std::string before = bytesOf(folder.book());
    DiskUnderTest disk;
    tryEach(bar, disk, [&](DiskUnderTest& bad, DiskFault fault, int n) {
        std::filesystem::remove_all(backupFolder(folder.book()));
        bad.failAt(n, fault);
        const auto made = makeBackup(folder.book(), BackupReason::daily, SystemClock());
        const bool failed = bad.failed();
        bad.heal();
        for (const Backup& backup : backupsOf(folder.book())) {
            if (bytesOf(backup.path).size() != before.size() || !readSummary(backup.path))
                bar.lose(faultAt(fault, n) + "half a backup");
        }
        if (made.ok() != (backupsOf(folder.book()).size() == 1))
            bar.lose(faultAt(fault, n) + "the answer is not what is there");
        if (bytesOf(folder.book()) != before)
            bar.lose(faultAt(fault, n) + "the book was changed");
        return failed;
    });
    return bar;
}

Bar fullDiskBar(const Extent& extent) {
    Bar bar{"the disk is full after so many bytes", 20, 0, {}, {}};
    DiskUnderTest disk;
    EditTry edit;
    int refused = 0;
    for (int size = 0; size < extent.diskSizes; ++size) {
        if (!edit.begin(bar))
            return bar;
        disk.failAt(0, DiskFault::none);
        disk.leaveRoom(size * 1800LL);
        const auto done = edit.perform();
        disk.heal();
        ++bar.tried;
        refused += done ? 0 : 1;
        if (!done && done.error().sentence != "The disk is full. Nothing was changed.")
            bar.lose(std::to_string(size) + ": " + done.error().sentence);
        judgeEdit(bar, edit, DiskFault::full, size, done);
    }
    bar.note = std::to_string(refused) + " refused";
    return bar;
}

} // namespace miterbook
