// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace miterbook {

/// How one way of losing a book was tried, how often, and where something was lost.
struct Bar {
    std::string what;
    long wanted = 0; ///< tries
    long tried = 0;
    std::vector<std::string> lost; ///< one sentence for each try in which something was
    std::string note;

    bool holds() const { return lost.empty() && tried >= wanted; }
    void lose(const std::string& where) { lost.push_back(where); }
};

/// How much of it: all that numbers ask for, or a part that every test run can afford.
struct Extent {
    int kills = 1000;
    int bitFlips = 2000;
    int truncations = 500;
    int zeroedPages = 300;
    int salvages = 60;
    int diskSizes = 40;
    int powerLosses = 4; ///< for each operation
    int editsOfTwo = 500;
    std::uint32_t seed = 1;
};

inline Extent shortExtent() {
    return {20, 60, 20, 16, 6, 20, 1, 20, 1};
}

/// A program is killed in the midst of its edits, again and again.
Bar killBar(const Extent& extent);
/// Each write, sync, cut and removal of an edit fails once, in each way a disk fails.
Bar editFaultBar();
/// Likewise of bringing an old book to the present format, and of a backup.
/// At every n-th operation.
Bar formatFaultBar(int every);
Bar backupFaultBar();
/// The power goes at each operation of an edit, and of a change of format.
Bar powerBar(const Extent& extent);
/// The disk is full after so many bytes.
Bar fullDiskBar(const Extent& extent);
/// Bits turned, files cut short, pages zeroed: no issued paper changes without a word.
Bar bitFlipBar(const Extent& extent);
Bar truncationBar(const Extent& extent);
Bar zeroedPageBar(const Extent& extent);
/// What a salvage makes of such a book is sound.
Bar salvageBar(const Extent& extent);
/// Two programs write the same book in turns.
Bar twoProgramsBar(const Extent& extent);
/// Each old format is brought up on a copy; a newer one is refused and stays as it is.
Bar formatsBar();

} // namespace miterbook
