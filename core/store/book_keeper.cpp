// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/book_keeper.h"

#include "store/book_info.h"
#include "store/book_lock.h"
#include "store/book_repository.h"
#include "store/connection.h"
#include "store/edit_writer.h"
#include "store/file_header.h"
#include "store/job_repository.h"
#include "store/new_file.h"
#include "store/plan_repository.h"
#include "store/sqlite_guard.h"
#include "store/store_options.h"
#include "store/time_repository.h"

namespace miterbook {

BookKeeper::BookKeeper(std::string path, std::unique_ptr<Connection> connection,
    std::unique_ptr<BookLock> lock, const StoreOptions& options)
    : m_path(std::move(path))
    , m_lock(std::move(lock))
    , m_connection(std::move(connection))
    , m_clock(clockOf(options)) {
}

BookKeeper::~BookKeeper() = default;

Result<Book> BookKeeper::load() {
    Book book;
    auto prices = loadPrices(*m_connection);
    if (!prices)
        return prices.error();
    book.prices = std::move(prices).value();
    auto jobs = loadJobs(*m_connection);
    if (!jobs)
        return jobs.error();
    book.jobs = std::move(jobs).value();
    if (auto summed = sumTime(*m_connection, book.time); !summed)
        return summed.error();
    return book;
}

Result<SheetRows> BookKeeper::loadPlan(Id<Plan> plan) {
    return loadPlanRows(*m_connection, plan);
}

Result<Table<TimeEntry>> BookKeeper::loadTime(const TimeAsked& asked) {
    return loadTimeEntries(*m_connection, asked);
}

Result<SoldTasks> BookKeeper::loadSoldTasks() {
    return miterbook::loadSoldTasks(*m_connection);
}

Result<std::int64_t> BookKeeper::lastId() {
    const auto info = readBookInfo(*m_connection);
    if (!info)
        return info.error();
    return info->lastId;
}

Result<void> BookKeeper::write(const Edit& edit) {
    if (readOnly()) {
        return Error{Fault::storage,
            shownName(m_path) + " was opened for looking only. Nothing was changed."};
    }
    return writeEdit(*m_connection, m_clock.timestamp(), edit);
}

Result<void> BookKeeper::backUp(const std::string& path) {
    return makeNewFile(
        path, [&](const std::string& part) { return copyInto(*m_connection, part); });
}

Result<void> BookKeeper::verify() {
    return checkIntegrity(*m_connection);
}

Result<std::vector<JournalEntry>> BookKeeper::journal(std::int64_t seq) {
    return journalAfter(*m_connection, seq);
}

} // namespace miterbook
