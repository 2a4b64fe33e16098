// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/soundness.h"

#include "basics/quote.h"
#include "basics/sha256.h"
#include "store/cell.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr int firstFormatWithPapers = 4;

std::string paperName(const SqlStatement& row) {
    return capitalised(cellText(row.value(0))) + " " + cellText(row.value(1));
}

Result<void> firstOf(const Result<std::vector<std::string>>& found, const char* intro) {
    if (!found)
        return found.error();
    if (found->empty())
        return {};
    return Error{Fault::storage, intro + found->front()};
}

} // namespace

Result<std::vector<std::string>> damageOf(Connection& connection, int most) {
    std::vector<std::string> found;
    const auto full = [&] { return std::ssize(found) >= most; };
    const auto pages = connection.readEach(
        "PRAGMA integrity_check(" + std::to_string(most) + ")", [&](const SqlStatement& row) {
            if (const std::string text = cellText(row.value(0)); text != "ok")
                found.push_back(text);
            return !full();
        });
    if (!pages)
        return pages.error();
    const auto references = connection.readEach(
        "PRAGMA foreign_key_check", [&](const SqlStatement& row) {
            found.push_back("The " + cellText(row.value(0)) + " " + cellText(row.value(1))
                + " names a " + cellText(row.value(2)) + " that is not in the book.");
            return !full();
        });
    if (!references)
        return references.error();
    return found;
}

Result<std::vector<std::string>> changedPapers(const BookReading& book) {
    std::vector<std::string> found;
    if (book.format < firstFormatWithPapers)
        return found;
    const auto read = book.connection->readEach(
        "SELECT kind, number, paper, sum FROM issued_paper ORDER BY id",
        [&](const SqlStatement& row) {
            if (sha256(cellText(row.value(2))) != cellText(row.value(3)))
                found.push_back(paperName(row) + " is not what was issued.");
            return true;
        });
    if (!read)
        return read.error();
    return found;
}

Result<void> checkSoundness(const std::string& path) {
    const auto book = openForReading(path);
    if (!book)
        return book.error();
    const auto damage = firstOf(damageOf(*book->connection, 1), "The book file is damaged: ");
    if (!damage)
        return damage;
    return firstOf(changedPapers(*book), "The book file is damaged: ");
}

} // namespace miterbook
