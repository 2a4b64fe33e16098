// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/keeper.h"
#include "store/journal.h"

#include <memory>
#include <string>
#include <vector>

namespace miterbook {

class BookLock;
class Clock;
class Connection;
struct StoreOptions;

/// Keeps a book in its SQLite file. Made by createBook and openBook; to be used by one thread. The
/// book is held until the keeper goes.
class BookKeeper final : public Keeper {
public:
    /// Over an opened and checked connection; `lock` is none for a book opened for looking only.
    BookKeeper(std::string path, std::unique_ptr<Connection> connection,
        std::unique_ptr<BookLock> lock, const StoreOptions& options);
    ~BookKeeper() override;

    Result<Book> load() override;
    Result<SheetRows> loadPlan(Id<Plan> plan) override;
    Result<Table<TimeEntry>> loadTime(const TimeAsked& asked) override;
    Result<SoldTasks> loadSoldTasks() override;
    Result<std::int64_t> lastId() override;
    Result<void> write(const Edit& edit) override;

    const std::string& path() const { return m_path; }
    /// Opened for looking only: write() refuses with a sentence.
    bool readOnly() const { return !m_lock; }
    /// A whole copy in a new file, good even while the book is in use. Errors: the file is there
    /// already, the disk.
    Result<void> backUp(const std::string& path);
    /// Reads every page and reference. Errors: the first damage found.
    Result<void> verify();
    /// The edits made after journal entry `seq` (0: all), oldest first.
    Result<std::vector<JournalEntry>> journal(std::int64_t seq = 0);

private:
    std::string m_path;
    std::unique_ptr<BookLock> m_lock; // goes after the connection
    std::unique_ptr<Connection> m_connection;
    const Clock& m_clock;
};

} // namespace miterbook
