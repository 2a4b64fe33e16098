// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/spec_rows.h"
#include "widgets/table_model_base.h"

#include <memory>
#include <utility>
#include <vector>

namespace miterbook {

/// A table over rows of the book, or over rows computed from it. What is shown is read again after
/// every change; a typed cell becomes one Edit.
template <class Row>
class TableModel final : public TableModelBase {
public:
    TableModel(Desk& desk, TableSpec<Row> spec, QObject* parent = nullptr)
        : TableModelBase(desk, std::make_unique<SpecRows<Row>>(desk, std::move(spec)), parent) {}

    /// The row at a place; nullptr for the blank row.
    const Row* rowAt(int row) const { return static_cast<const Row*>(realRow(row)); }
    /// Copies of all rows but the blank one.
    std::vector<Row> rows() const {
        std::vector<Row> rows;
        for (int row = 0; row < realRows(); ++row)
            rows.push_back(*rowAt(row));
        return rows;
    }
};

} // namespace miterbook
