// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/edit.h"
#include "widgets/column.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace miterbook {

/// What a row is to the plan that is shown: said in words and in the type, never by colour alone.
enum class RowMark { plain, added, changed, removed };

/// A row whose type only its TableRows knows.
using RowBox = std::unique_ptr<void, void (*)(void*)>;

template <class Row>
RowBox boxed(Row row) {
    return {new Row(std::move(row)), [](void* box) { delete static_cast<Row*>(box); }};
}

/// What is the same in every row of a column.
struct ColumnFacts {
    const char* title = "";
    CellKind kind = CellKind::text;
    bool typed = false;     ///< can be typed into
    bool numbered = false;  ///< has an exact value behind its text
    bool whereFrom = false; ///< says where its value came from
    bool summed = false;
    bool chosen = false; ///< has choices
    int letters = 0;     ///< to have room for, whatever is in it
    QString (*write)(std::int64_t, const Book&) = nullptr;
};

/// All that a table asks of rows of one kind, without their type, so that tables are compiled once
/// and not for each kind of row. A `row` points at what a RowBox of the same TableRows holds.
class TableRows {
public:
    virtual ~TableRows() = default;

    virtual QString name() const = 0;
    virtual QString emptyHint() const = 0;
    virtual int columns() const = 0;
    virtual ColumnFacts column(int c) const = 0;
    /// Rows are neither removed nor copied by the table's own gestures.
    virtual bool fixedRows() const = 0;
    virtual bool hasHead() const = 0;

    /// The rows as the book has them now.
    virtual std::vector<RowBox> read() const = 0;
    /// What makes two rows the same one.
    virtual std::int64_t key(const void* row, std::size_t place) const = 0;
    /// The n-th new row of one gesture; empty where none can be typed.
    virtual RowBox blank(int n) const = 0;
    virtual RowBox copy(const void* row) const = 0;
    virtual bool same(const void* a, const void* b) const = 0;

    virtual QString text(const void* row, int c, const Book& book) const = 0;
    virtual std::int64_t number(const void* row, int c) const = 0;
    /// A number as that cell would say it.
    virtual QString written(
        std::int64_t number, const void* row, int c, const Book& book) const = 0;
    virtual bool applies(const void* row, int c) const = 0;
    virtual QString whereFrom(const void* row, int c, const Book& book) const = 0;
    virtual QStringList choices(const void* row, int c, const Book& book) const = 0;
    virtual RowMark mark(const void* row) const = 0;
    virtual QString head(const void* row) const = 0;

    /// Puts typed text into a cell. Errors: one sentence.
    virtual Result<void> put(void* row, int c, const QString& typed, const Book& book) const = 0;
    /// A value somebody has typed over is the shop's own from then on.
    virtual void own(void* row) const = 0;
    /// Makes a copy a row of its own: `fresh` is the blank row of the same n.
    virtual void renew(void* copy, const void* fresh, int n) const = 0;
    virtual Result<void> check(const void* row) const = 0;
    virtual std::string title(const void* row) const = 0;
    virtual void store(EditBuilder& edit, const void* row) = 0;
    virtual void remove(EditBuilder& edit, const void* row) = 0;
};

} // namespace miterbook
