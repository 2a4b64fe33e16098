// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/cell.h"
#include "store/table_store.h"

#include <string_view>

namespace miterbook {

/// The shape of a kind of row's table, made once for the whole run of the program.
template <Described Row>
const TableShape& shapeOf() {
    static const TableShape shape = [] {
        std::vector<std::string_view> columns;
        forEachField<Row>([&](const auto& field) { columns.push_back(field.name); });
        const RowSql sql = rowSql(Describe<Row>::table, columns);
        return TableShape{Describe<Row>::table, Describe<Row>::noun, columns, sql};
    }();
    return shape;
}

template <Described Row>
Cells toCells(const Row& row) {
    Cells cells;
    cells.reserve(fieldCount<Row>);
    forEachField<Row>([&](const auto& field) { cells.push_back(toCell(row.*field.member)); });
    return cells;
}

/// Reads cells into a row. Value: how many columns could be read before one could not; all of them
/// when all is well.
template <Described Row>
std::size_t readCells(const Cells& cells, Row& row) {
    std::size_t column = 0;
    bool sound = true;
    forEachField<Row>([&](const auto& field) {
        sound = sound && readCell(cells[column], row.*field.member);
        column += sound ? 1 : 0;
    });
    return column;
}

} // namespace miterbook
