// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <cstdint>
#include <optional>
#include <utility>

namespace miterbook {

/// Which time entries are read: all, or those of a house, of some days, of both.
struct TimeAsked {
    std::optional<Id<House>> house;
    std::optional<std::pair<Date, Date>> days; ///< first and last
};

/// Tasks of bids that were won.
using SoldTasks = Table<SoldTask>;

/// Keeps one book safe: the file behind the values. Implemented by the store; a test may fail it.
class Keeper {
public:
    virtual ~Keeper() = default;

    /// Everything but the rows below plans and the time entries, whose sums there are.
    virtual Result<Book> load() = 0;
    /// The rows below one plan.
    virtual Result<SheetRows> loadPlan(Id<Plan> plan) = 0;
    virtual Result<Table<TimeEntry>> loadTime(const TimeAsked& asked) = 0;
    /// Those of all houses.
    virtual Result<SoldTasks> loadSoldTasks() = 0;
    /// The highest id the book has handed out.
    virtual Result<std::int64_t> lastId() = 0;
    /// Writes one edit and its journal row in one transaction: all of it or nothing, and on the
    /// disk when it returns. Errors: Fault::conflict (still referred to), Fault::storage.
    virtual Result<void> write(const Edit& edit) = 0;
};

} // namespace miterbook
