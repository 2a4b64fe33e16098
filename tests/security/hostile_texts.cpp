// SPDX-License-Identifier: GPL-3.0-or-later
#include "security/hostile_texts.h"

#include <vector>

namespace miterbook {

namespace {

template <class Rows>
void poisonTables(Rows& tables, const std::string& with) {
    tables.forEach([&]<class Row>(const Table<Row>& table) {
        std::vector<Row> rows;
        for (const auto& [id, row] : table)
            rows.push_back(row);
        for (Row& row : rows) {
            poison(row, with);
            tables.template of<Row>().put(std::move(row));
        }
    });
}

} // namespace

void poison(Book& book, const std::string& with) {
    PriceTables& prices = book.prices;
    poisonTables(prices, with);
    poisonTables(book.jobs, with);
    for (auto& [plan, rows] : book.sheets)
        poisonTables(rows, with);
}

} // namespace miterbook
