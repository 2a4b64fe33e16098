// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/salvage_rows.h"

#include "basics/sha256.h"
#include "job/row_shape.h"
#include "store/any_row_store.h"
#include "store/book_info.h"
#include "store/cell.h"
#include "store/journal.h"
#include "store/row_sql.h"
#include "store/safety/brought_up.h"
#include "store/safety/journal_states.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

using RowKey = std::pair<std::string, std::int64_t>;

std::string said(std::string_view noun, std::int64_t id) {
    return "The " + std::string(noun) + " with number " + std::to_string(id);
}

Result<std::vector<std::int64_t>> numbersOf(Connection& connection, std::string_view table) {
    std::vector<std::int64_t> ids;
    const auto read = connection.readEach(
        "SELECT \"id\" FROM " + miterbook::quoted(table) + " ORDER BY \"id\"",
        [&](const SqlStatement& row) {
            ids.push_back(row.value(0).toLongLong());
            return true;
        });
    if (!read)
        return read.error();
    return ids;
}

Result<void> runWithId(Connection& connection, const std::string& sql, std::int64_t id) {
    auto statement = connection.prepare(sql);
    if (!statement)
        return statement.error();
    statement->bind(numberCell(id));
    return statement->run();
}

Result<void> removeRaw(Connection& connection, std::string_view table, std::int64_t id) {
    return runWithId(
        connection, "DELETE FROM " + miterbook::quoted(table) + " WHERE \"id\" = ?", id);
}

Result<void> insertRow(Connection& connection, const AnyRow& row) {
    return writeChange(connection, Change{std::nullopt, row});
}

bool isAsIssued(const AnyRow& row) {
    const auto* paper = row.as<IssuedPaper>();
    return !paper || sha256(paper->paper.text) == paper->sum;
}

/// The mending of one book's rows.
class Mender {
public:
    Mender(Connection& connection, const JournalStates& states, SalvageReport& report)
        : m_connection(connection)
        , m_states(states)
        , m_report(report) {}

    Result<void> mendTable(std::string_view table, std::string_view noun) {
        const auto ids = numbersOf(m_connection, table);
        if (!ids)
            return ids.error();
        for (const std::int64_t id : *ids) {
            m_seen.insert({std::string(table), id});
            if (auto mended = mendRow(table, noun, id); !mended)
                return mended;
        }
        return {};
    }

    Result<void> restoreMissing() {
        for (const auto& [key, state] : m_states.rows) {
            if (!state.row || m_seen.contains(key))
                continue;
            if (insertRow(m_connection, *state.row))
                ++m_report.restored;
            else
                m_report.lost.push_back(said(state.row->noun(), key.second) + " is lost.");
        }
        return {};
    }

private:
    Result<void> mendRow(std::string_view table, std::string_view noun, std::int64_t id) {
        const auto row = findAnyRow(m_connection, table, id);
        const AnyRow* known = inJournal({std::string(table), id});
        if (row && *row && isAsIssued(**row)) {
            if (known && !isAsJournalled(*known, **row)) {
                m_report.lost.push_back(
                    said(noun, id) + " differs from what the journal says; look it over.");
            }
            return {};
        }
        return replace(table, noun, id, known && isAsIssued(*known) ? known : nullptr, row && *row);
    }

    Result<void> replace(std::string_view table, std::string_view noun, std::int64_t id,
        const AnyRow* known, bool readable) {
        if (!known && readable) {
            m_report.lost.push_back(said(noun, id) + " is not what was issued.");
            return {};
        }
        if (auto removed = removeRaw(m_connection, table, id); !removed)
            return removed;
        --m_report.kept;
        if (known && insertRow(m_connection, *known))
            ++m_report.restored;
        else
            m_report.lost.push_back(said(noun, id) + " is lost.");
        return {};
    }

    const AnyRow* inJournal(const RowKey& key) const {
        const auto it = m_states.rows.find(key);
        return it != m_states.rows.end() && it->second.row ? &*it->second.row : nullptr;
    }

    Connection& m_connection;
    const JournalStates& m_states;
    SalvageReport& m_report;
    std::set<RowKey> m_seen;
};

/// Calls `each(table, noun)` for every kind of row; stops at the first error.
template <class Each>
Result<void> eachTable(Each each) {
    Result<void> result;
    for (const RowShape* shape : rowShapes()) {
        if (result)
            result = each(shape->table, shape->noun);
    }
    return result;
}

void noteDifference(
    std::vector<Change>& changes, const LastState* state, std::optional<AnyRow> row) {
    const std::optional<AnyRow> before = state ? state->row : std::nullopt;
    if (before != row)
        changes.push_back(Change{before, std::move(row)});
}

/// What must be done to the journal's rows so that they are the tables'.
Result<std::vector<Change>> differences(Connection& connection, const JournalStates& states) {
    std::vector<Change> changes;
    std::set<RowKey> seen;
    const auto walked = eachTable([&](std::string_view table, std::string_view) -> Result<void> {
        const auto ids = numbersOf(connection, table);
        if (!ids)
            return ids.error();
        for (const std::int64_t id : *ids) {
            auto row = findAnyRow(connection, table, id);
            if (!row)
                return row.error();
            const RowKey key{std::string(table), id};
            seen.insert(key);
            const auto it = states.rows.find(key);
            noteDifference(changes, it == states.rows.end() ? nullptr : &it->second, *row);
        }
        return {};
    });
    if (!walked)
        return walked.error();
    for (const auto& [key, state] : states.rows) {
        if (!seen.contains(key))
            noteDifference(changes, &state, std::nullopt);
    }
    return changes;
}

} // namespace

Result<void> mendRows(Connection& connection, SalvageReport& report) {
    const auto states = journalStates(connection);
    if (!states)
        return states.error();
    report.edits = states->entries;
    Mender mender(connection, *states, report);
    const auto mended = eachTable([&](std::string_view table, std::string_view noun) {
        return mender.mendTable(table, noun);
    });
    return mended ? mender.restoreMissing() : mended;
}

Result<void> closeSalvage(Connection& connection, const std::string& now) {
    const auto states = journalStates(connection);
    if (!states)
        return states.error();
    auto changes = differences(connection, *states);
    if (!changes)
        return changes.error();
    Edit edit{"Salvage the book", *std::move(changes)};
    if (auto noted = appendToJournal(connection, now, edit); !noted)
        return noted;
    std::int64_t highest = highestId(edit);
    for (const auto& [key, state] : states->rows)
        highest = std::max(highest, key.second);
    return raiseLastId(connection, highest);
}

} // namespace miterbook
