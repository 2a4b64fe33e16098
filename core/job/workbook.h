// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/id.h"
#include "job/keeper.h"

#include <set>

namespace miterbook {

/// An open book: the value in memory and the keeper of its file, always saying the same.
class Workbook {
public:
    /// Loads the book; the keeper must outlive the workbook.
    static Result<Workbook> open(Keeper& keeper);

    const Book& book() const { return m_book; }
    IdSource& ids() { return m_ids; }
    /// The day whose prices and burden are in force.
    void setDay(Date day) { m_book.prices.setDay(day); }

    /// Makes sure that a plan's rows are in memory, and a house's time with its own plan.
    Result<void> openPlan(Id<Plan> plan);
    /// Makes sure that the time entries of some days are in memory.
    Result<void> openDays(Date first, Date last);
    /// The tasks of all bids that were won, read from the book file.
    Result<SoldTasks> soldTasks() { return m_keeper->loadSoldTasks(); }
    /// Checks, writes, then changes the value in memory. On an error all three are as before.
    Result<void> perform(const Edit& edit);

private:
    Workbook(Keeper& keeper, Book book, std::int64_t lastId)
        : m_keeper(&keeper)
        , m_book(std::move(book))
        , m_ids(lastId) {}

    Keeper* m_keeper;
    Book m_book;
    IdSource m_ids;
    std::set<Date> m_days; ///< of which all time entries have been read
};

} // namespace miterbook
