// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/time_repository.h"

#include "store/cell.h"
#include "store/row_loading.h"

namespace miterbook {

namespace {

// The first is answered from time_entry_sum alone and in its order, whatever the number of entries;
// callbacks, which are few, have an index of their own.
constexpr const char* sums
    = "SELECT house, work, task, kind, NULL, sum(\"time\"), sum(done), count(*) FROM time_entry "
      "WHERE kind <> 'callback' GROUP BY house, work, task, kind";
constexpr const char* callbackSums
    = "SELECT house, work, task, kind, \"date\", sum(\"time\"), sum(done), count(*) "
      "FROM time_entry WHERE kind = 'callback' GROUP BY house, work, task, kind, \"date\"";

Result<TimeSum> readSum(const SqlStatement& row) {
    TimeSum sum;
    std::int64_t entries = 0;
    const bool sound = readCell(row.value(0), sum.key.house) && readCell(row.value(1), sum.key.work)
        && readCell(row.value(2), sum.key.task) && readCell(row.value(3), sum.key.kind)
        && readCell(row.value(4), sum.key.day) && readCell(row.value(5), sum.time)
        && readCell(row.value(6), sum.done) && readCell(row.value(7), entries);
    if (!sound)
        return Error{Fault::storage, "The book file is damaged: its time cannot be added up."};
    sum.entries = static_cast<int>(entries);
    return sum;
}

Result<void> addSums(Connection& connection, const char* sql, TimeBook& time) {
    return connection.readEach(sql, [&](const SqlStatement& row) -> Result<bool> {
        const auto sum = readSum(row);
        if (!sum)
            return sum.error();
        time.addSum(*sum);
        return true;
    });
}

} // namespace

Result<void> sumTime(Connection& connection, TimeBook& time) {
    if (auto added = addSums(connection, sums, time); !added)
        return added;
    return addSums(connection, callbackSums, time);
}

Result<Table<TimeEntry>> loadTimeEntries(Connection& connection, const TimeAsked& asked) {
    RowsAsked rows{"1 = 1", {}};
    if (asked.house) {
        rows.condition += " AND house = ?";
        rows.keys.push_back(referenceCell(asked.house->value()));
    }
    if (asked.days) {
        rows.condition += " AND \"date\" BETWEEN ? AND ?";
        rows.keys.push_back(dateCell(isoDate(asked.days->first)));
        rows.keys.push_back(dateCell(isoDate(asked.days->second)));
    }
    return loadTable<TimeEntry>(connection, rows);
}

Result<SoldTasks> loadSoldTasks(Connection& connection) {
    return loadTable<SoldTask>(connection, RowsAsked::all());
}

} // namespace miterbook
