// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/checks.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/table_file.h"

#include <QCoreApplication>

namespace miterbook {

/// A spec for all rows of one kind of the price book; new rows begin as `begin` makes them.
template <class Row>
TableSpec<Row> bookSpec(Desk& desk, const QString& name, std::span<const Column<Row>> columns,
    std::function<Row(int)> begin) {
    TableSpec<Row> spec;
    spec.name = name;
    spec.columns = columns;
    spec.rows = [&desk] {
        std::vector<Row> rows;
        for (const auto& [id, row] : desk.book().prices.of<Row>())
            rows.push_back(row);
        return rows;
    };
    spec.blank = std::move(begin);
    spec.check = [&desk](const Row& row) { return check(row, desk.book().prices); };
    spec.copied = [](Row& row, int) {
        if constexpr (requires { row.name.size(); })
            row.name += " copy";
    };
    spec.emptyHint = QCoreApplication::translate(
        "Table", "Type the first row above, or paste rows from a spreadsheet.");
    return spec;
}

template <class Row>
QWidget* bookTable(Desk& desk, TableSpec<Row> spec) {
    auto* model = new TableModel<Row>(desk, std::move(spec));
    auto* panel = new TablePanel(*model);
    model->setParent(panel);
    addFileButton(*panel);
    return panel;
}

/// The first of an enumeration that no row has yet; the last one when all are taken.
template <class Row, auto M>
auto firstFree(const Book& book) {
    using E = std::remove_cvref_t<decltype(std::declval<Row>().*M)>;
    for (const auto& entry : Words<E>::list) {
        bool taken = false;
        for (const auto& [id, row] : book.prices.of<Row>())
            taken = taken || row.*M == entry.value;
        if (!taken)
            return entry.value;
    }
    return Words<E>::list.back().value;
}

} // namespace miterbook
