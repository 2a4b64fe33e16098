// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/whole_edit.h"

namespace miterbook {

Edit wholeEdit(const Book& book, std::string sentence) {
    Edit edit{std::move(sentence), {}};
    const auto add = [&](const auto& table) {
        for (const auto& [id, row] : table)
            edit.changes.push_back({std::nullopt, AnyRow(row)});
    };
    book.prices.forEach(add);
    book.jobs.forEach(add);
    for (const auto& [plan, rows] : book.sheets)
        rows.forEach(add);
    add(book.time.read());
    return edit;
}

} // namespace miterbook
