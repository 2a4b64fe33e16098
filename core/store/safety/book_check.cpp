// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/book_check.h"

#include "job/any_row.h"
#include "store/any_row_store.h"
#include "store/file_header.h"
#include "store/row_sql.h"
#include "store/safety/brought_up.h"
#include "store/safety/disk.h"
#include "store/safety/journal_states.h"
#include "store/safety/soundness.h"
#include "store/safety/tolerant_scan.h"
#include "store/safety/working_copy.h"
#include "store/schema.h"
#include "store/sqlite_guard.h"

#include <QDir>

#include <optional>
#include <set>

namespace miterbook {

namespace {

constexpr std::size_t mostFindings = 200;

/// Gathers findings; beyond the most it only counts them.
class Findings {
public:
    explicit Findings(BookReport& report)
        : m_report(report) {}
    ~Findings() {
        if (m_more > 0)
            m_report.findings.push_back("And " + std::to_string(m_more) + " more.");
    }
    void add(std::string sentence) {
        if (m_report.findings.size() < mostFindings)
            m_report.findings.push_back(std::move(sentence));
        else
            ++m_more;
    }
    void addAll(const Result<std::vector<std::string>>& found) {
        if (!found)
            return add(found.error().sentence);
        for (const std::string& sentence : *found)
            add(sentence);
    }

private:
    BookReport& m_report;
    std::int64_t m_more = 0;
};

std::string nameOf(std::string_view noun, std::int64_t id) {
    return "The " + std::string(noun) + " with number " + std::to_string(id);
}

/// The numbers of a table's rows, as far as they can be read.
Result<std::vector<std::int64_t>> idsOf(Connection& connection, std::string_view table) {
    std::vector<std::int64_t> ids;
    const auto scanned = scanAround(connection, miterbook::quoted(table), {"\"id\""},
        [&](const Cells& cells) { ids.push_back(cells.front().toLongLong()); });
    if (!scanned)
        return scanned.error();
    return ids;
}

/// Holds the tables against the journal, row by row.
class RowCheck {
public:
    RowCheck(Connection& connection, JournalStates& states, BookReport& report, Findings& findings)
        : m_connection(connection)
        , m_states(states)
        , m_report(report)
        , m_findings(findings) {}

    void checkTable(std::string_view table, std::string_view noun) {
        const auto ids = idsOf(m_connection, table);
        if (!ids)
            return m_findings.add("The table of each " + std::string(noun)
                + " cannot be read: " + ids.error().sentence);
        for (const std::int64_t id : *ids)
            checkRow(table, noun, id);
    }
    /// Rows that the journal has and the tables have not.
    void checkMissing() {
        for (const auto& [key, state] : m_states.rows) {
            if (state.row && !m_seen.contains(key))
                m_findings.add(nameOf(state.row->noun(), key.second) + ", in the book since change "
                    + std::to_string(state.seq) + ", is missing.");
        }
    }

private:
    void checkRow(std::string_view table, std::string_view noun, std::int64_t id) {
        ++m_report.rows;
        const auto row = findAnyRow(m_connection, table, id);
        const auto key = std::pair(std::string(table), id);
        m_seen.insert(key);
        if (!row)
            return m_findings.add(row.error().sentence);
        if (!*row)
            return m_findings.add(nameOf(noun, id) + " cannot be found by its number.");
        const auto known = m_states.rows.find(key);
        if (known != m_states.rows.end() && known->second.row
            && isAsJournalled(*known->second.row, **row))
            return;
        if (known != m_states.rows.end())
            m_findings.add(nameOf(noun, id) + " is not as change "
                + std::to_string(known->second.seq) + " has left it.");
        else if (m_states.whole())
            m_findings.add(nameOf(noun, id) + " was entered by no change.");
    }

    Connection& m_connection;
    JournalStates& m_states;
    BookReport& m_report;
    Findings& m_findings;
    std::set<std::pair<std::string, std::int64_t>> m_seen;
};

void checkRows(Connection& connection, BookReport& report, Findings& findings) {
    auto states = journalStates(connection);
    if (!states)
        return findings.add("The journal cannot be read: " + states.error().sentence);
    report.edits = states->last;
    for (const std::int64_t seq : states->unreadable)
        findings.add("Change " + std::to_string(seq) + " of the journal cannot be read.");
    if (const auto gone = states->last - states->entries - std::ssize(states->unreadable); gone > 0)
        findings.add("The journal lacks " + std::to_string(gone) + " of its changes.");
    RowCheck check(connection, *states, report, findings);
    for (const RowShape* shape : rowShapes())
        check.checkTable(shape->table, shape->noun);
    check.checkMissing();
}

Result<BookReading> openUnchecked(const std::string& path, int format, Access access) {
    auto connection = Connection::open(path, access);
    if (!connection)
        return connection.error();
    if (auto guarded = guardConnection(**connection); !guarded)
        return guarded.error();
    return BookReading{format, std::move(connection).value()};
}

void checkAll(const BookReading& book, BookReport& report) {
    Connection& connection = *book.connection;
    Findings findings(report);
    if (const auto ours = checkSchema(connection, schemaSteps(), book.format); !ours)
        findings.add(ours.error().sentence);
    findings.addAll(damageOf(connection, static_cast<int>(mostFindings)));
    findings.addAll(changedPapers(book));
    if (book.format == formatOf(schemaSteps()))
        checkRows(connection, report, findings);
    if (const auto papers = connection.readOne("SELECT count(*) FROM issued_paper"))
        report.papers = papers->toLongLong();
}

} // namespace

Result<BookReport> checkBook(const std::string& path) {
    const auto format = readFileHeader(path, formatOf(schemaSteps()));
    if (!format)
        return format.error();
    BookReport report;
    report.format = *format;
    std::optional<WorkingCopy> copy;
    if (hasJournal(path)) {
        auto made = WorkingCopy::of(path, (QDir::tempPath() + QStringLiteral("/x")).toStdString());
        if (!made)
            return made.error();
        copy = std::move(made).value();
    }
    const auto book = copy ? openUnchecked(copy->path(), *format, Access::readWrite)
                           : openUnchecked(path, *format, Access::readOnly);
    if (!book) {
        report.findings.push_back(book.error().sentence);
        return report;
    }
    checkAll(*book, report);
    return report;
}

} // namespace miterbook
