// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/id.h"
#include "job/keeper.h"

namespace miterbook {

/// An open book: the value in memory and the keeper of its file, always saying the same.
class Workbook {
public:
    /// Loads the book; the keeper must outlive the workbook.
    static Result<Workbook> open(Keeper& keeper);

    const Book& book() const { return m_book; }
    IdSource& ids() { return m_ids; }

    /// Makes sure that a plan's rows are in memory.
    Result<void> openPlan(Id<Plan> plan);
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
};

} // namespace miterbook
