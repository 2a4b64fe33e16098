// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "basics/tables.h"
#include "hours/time_entry.h"

#include <map>
#include <vector>

namespace miterbook {

/// Rows of which a book holds far too many to have them all in memory.
using TimeTables = Tables<TimeEntry>;

/// What entries of a house have in common that add up. Callbacks are kept by day as well: how often
/// somebody had to come back counts, not only for how long.
struct TimeKey {
    Id<House> house; ///< none: the shop's own time
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    TimeKind kind = TimeKind::work;
    Date day = noDate; ///< of callbacks only

    auto operator<=>(const TimeKey&) const = default;
};

TimeKey timeKeyOf(const TimeEntry& entry);

struct TimeSum {
    TimeKey key;
    Hours time;
    Quantity done;
    int entries = 0;

    bool operator==(const TimeSum&) const = default;
};

/// The time of a shop: what all entries add up to, always, and those entries that have been read so
/// far. Ten years of entries need not be read to know how a house stands.
class TimeBook {
public:
    const Table<TimeEntry>& read() const { return m_read; }
    /// A house's sums by key; with no house the shop's own.
    const std::vector<TimeSum>& of(Id<House> house) const;
    /// The same as entries without id and person: whoever adds up entries can add up these.
    std::vector<TimeEntry> summedEntries(Id<House> house) const;
    Hours total(Id<House> house) const;

    /// Takes in a sum of the book file, in any order.
    void addSum(const TimeSum& sum);
    /// Takes in entries of the book file, which the sums hold already.
    void addRead(const Table<TimeEntry>& entries);
    /// Leaves the sums and forgets the entries.
    void forgetRead() { m_read = {}; }
    /// An entry came (no before), changed or went (no after).
    void change(const TimeEntry* before, const TimeEntry* after);

    bool operator==(const TimeBook&) const = default;

private:
    void add(const TimeKey& key, Hours time, Quantity done, int entries);

    Table<TimeEntry> m_read;
    std::map<Id<House>, std::vector<TimeSum>> m_sums; ///< of each house by key; none empty
};

} // namespace miterbook
