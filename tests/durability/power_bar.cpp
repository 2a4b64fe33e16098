// SPDX-License-Identifier: GPL-3.0-or-later
// The power goes: what was synced is there, what was not may be there in part.
#include "durability/bar.h"
#include "durability/edit_try.h"
#include "store/safety/backups.h"
#include "store/safety/old_book.h"

#include <filesystem>

namespace miterbook {

namespace {

/// Value: whether the power went before the edit was done.
bool loseAt(Bar& bar, DiskUnderTest& disk, EditTry& edit, int n, RandomValues& random) {
    if (!edit.begin(bar))
        return false;
    disk.failAt(n, DiskFault::powerLoss);
    const auto done = edit.perform();
    const bool failed = disk.failed();
    edit.close();
    disk.losePower(random);
    const std::string found = edit.found();
    if (!failed && found != "new")
        bar.lose("after the edit was done: " + found);
    if (failed && found != "old" && found != "new")
        bar.lose("at operation " + std::to_string(n) + ": " + found);
    if (failed && done && found != "new")
        bar.lose("at operation " + std::to_string(n) + ", done, but " + found);
    ++bar.tried;
    return failed;
}

bool loseFormatAt(Bar& bar, DiskUnderTest& disk, const BookFolder& folder, const std::string& old,
    int n, RandomValues& random) {
    std::filesystem::remove_all(backupFolder(folder.book()));
    std::filesystem::remove(folder.book() + "-journal");
    writeBytes(folder.book(), old);
    disk.failAt(n, DiskFault::powerLoss);
    (void)openBook(folder.book(), OpenMode::write);
    const bool failed = disk.failed();
    disk.losePower(random);
    auto keeper = openBook(folder.book(), OpenMode::write);
    if (!keeper)
        bar.lose("changing the format, at operation " + std::to_string(n) + ": "
            + keeper.error().sentence);
    else if (const auto book = loadWhole(**keeper); !book || *book != smallBook())
        bar.lose("changing the format, at operation " + std::to_string(n));
    ++bar.tried;
    return failed;
}

} // namespace

Bar powerBar(const Extent& extent) {
    Bar bar{"the power goes at an operation of an edit or a change of format", 50, 0, {}, {}};
    RandomValues random(extent.seed);
    DiskUnderTest disk;
    EditTry edit;
    BookFolder folder;
    writeOldBook(folder.book(), 1);
    const std::string old = bytesOf(folder.book());
    for (int round = 0; round < extent.powerLosses; ++round) {
        for (int n = 1; loseAt(bar, disk, edit, n, random); ++n) {
        }
        for (int n = 1; loseFormatAt(bar, disk, folder, old, n, random); n += 3) {
        }
    }
    return bar;
}

} // namespace miterbook
