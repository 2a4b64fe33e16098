// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"
#include "job/keeper.h"
#include "job/whole_edit.h"

#include <utility>

namespace miterbook {

/// A keeper without a file, for tests of the screens: holds a book, and fails when told to.
class MemoryKeeper final : public Keeper {
public:
    explicit MemoryKeeper(Book book)
        : m_book(std::move(book)) {}

    /// The next writes fail with this sentence; empty: they succeed again.
    void failWith(std::string sentence) { m_failure = std::move(sentence); }
    const Book& kept() const { return m_book; }
    int writes() const { return m_writes; }

    Result<Book> load() override {
        Book book = m_book;
        book.sheets.clear();
        book.time.forgetRead();
        return book;
    }
    Result<Table<TimeEntry>> loadTime(const TimeAsked& asked) override {
        Table<TimeEntry> found;
        for (const auto& [id, entry] : m_book.time.read()) {
            const bool ofHouse = !asked.house || entry.house == *asked.house;
            const bool ofDays = !asked.days
                || (asked.days->first <= entry.date && entry.date <= asked.days->second);
            if (ofHouse && ofDays)
                found.put(entry);
        }
        return found;
    }
    Result<SoldTasks> loadSoldTasks() override {
        SoldTasks found;
        for (const auto& [plan, rows] : m_book.sheets) {
            for (const auto& [id, task] : rows.of<SoldTask>())
                found.put(task);
        }
        return found;
    }
    Result<SheetRows> loadPlan(Id<Plan> plan) override { return m_book.sheet(plan); }
    Result<std::int64_t> lastId() override { return highestId(wholeEdit(m_book, "all rows")); }
    Result<void> write(const Edit& edit) override {
        if (!m_failure.empty())
            return Error{Fault::storage, m_failure};
        apply(m_book, edit);
        ++m_writes;
        return {};
    }

private:
    Book m_book;
    std::string m_failure;
    int m_writes = 0;
};

} // namespace miterbook
