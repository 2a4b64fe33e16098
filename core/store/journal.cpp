// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/journal.h"

#include "job/edit_json.h"
#include "store/cell.h"

namespace miterbook {

namespace {

Result<JournalEntry> readEntry(const SqlStatement& statement) {
    JournalEntry entry;
    entry.seq = statement.value(0).toLongLong();
    entry.at = cellText(statement.value(1));
    entry.edit.sentence = cellText(statement.value(2));
    auto changes = changesFromText(cellText(statement.value(3)));
    if (!changes) {
        return Error{Fault::storage,
            "The book's journal is damaged at entry " + std::to_string(entry.seq) + ": "
                + changes.error().sentence};
    }
    entry.edit.changes = std::move(changes).value();
    return entry;
}

} // namespace

Result<void> appendToJournal(Connection& connection, const std::string& at, const Edit& edit) {
    auto statement = connection.prepare(
        "INSERT INTO journal (at, sentence, changes) VALUES (?, ?, ?)");
    if (!statement)
        return statement.error();
    statement->bind(textCell(at));
    statement->bind(textCell(edit.sentence));
    statement->bind(textCell(changesToText(edit.changes)));
    return statement->run();
}

Result<std::vector<JournalEntry>> journalAfter(Connection& connection, std::int64_t seq) {
    auto statement = connection.prepare(
        "SELECT seq, at, sentence, changes FROM journal WHERE seq > ? ORDER BY seq");
    if (!statement)
        return statement.error();
    statement->bind(QVariant(static_cast<qlonglong>(seq)));
    std::vector<JournalEntry> entries;
    const auto read = statement->runEach([&](const SqlStatement& row) -> Result<bool> {
        auto entry = readEntry(row);
        if (!entry)
            return entry.error();
        entries.push_back(std::move(entry).value());
        return true;
    });
    if (!read)
        return read.error();
    return entries;
}

} // namespace miterbook
