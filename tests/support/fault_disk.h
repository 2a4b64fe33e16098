// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/random_values.h"

#include <string>

namespace miterbook {

/// What the disk does at an operation.
enum class DiskFault {
    none,
    writeFails,   ///< I/O error, nothing written
    writeTears,   ///< I/O error after half of the bytes
    full,         ///< no room, from then on until the fault is lifted
    syncFails,    ///< I/O error; what was written may be there or not
    shortenFails, ///< I/O error at cutting a file short
    removeFails,  ///< the journal cannot be taken away
    removeUnsaid, ///< the journal is taken away, but an error is said
    powerLoss,    ///< from then on every operation fails; see DiskUnderTest::losePower
};

/// Stands between SQLite and the disk for every file that is opened while it lives, Qt's driver
/// included: both use the one SQLite library of the machine, in which this registers itself as the
/// default file system. Operations that change the disk are counted from 1: writes, syncs, cuts and
/// removals. One at a time, from one thread.
class DiskUnderTest {
public:
    DiskUnderTest();
    ~DiskUnderTest();
    DiskUnderTest(const DiskUnderTest&) = delete;
    DiskUnderTest& operator=(const DiskUnderTest&) = delete;

    /// Counts anew; the n-th operation from now that the fault fits meets it. 0: none does.
    void failAt(int n, DiskFault fault);
    /// No fault any more, and the count stands.
    void heal();
    /// Operations since failAt(), as far as the fault fits them; all of them for powerLoss and
    /// none.
    int counted() const;
    /// Whether the fault has been met.
    bool failed() const;
    /// Files may grow together by so many bytes more; beyond it the disk is full. Below 0: no
    /// limit.
    void leaveRoom(long long bytes);

    /// After powerLoss and once every file is closed: leaves in each file what was synced, and of
    /// what was not any part that chance will have it, torn in the middle too. Then heals.
    void losePower(RandomValues& random);
};

} // namespace miterbook
