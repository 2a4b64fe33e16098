// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/book.h"

#include <QString>
#include <QStringList>

#include <cstdint>

namespace miterbook {

/// What a cell holds: it decides alignment, editor and the unit beside the column's title.
enum class CellKind {
    text,
    lines, ///< several lines of text
    number,
    length,   ///< in the shop's unit
    run,      ///< running feet, or metres
    runPrice, ///< money for one of them
    floor,    ///< square feet, or square metres
    money,    ///< in the book's currency
    percent,
    choice, ///< one of choices()
    check,  ///< number() is 0 or 1
};

/// One column of a table, as plain functions so that whole tables are constants. Most are made by
/// the functions in columns.h; computed ones are written out:
///   Column<Line>{.title = "Hours", .kind = CellKind::number, .read = [](const Line& l, const
///   Book&)
///                { return text(formatHours(l.hours)); }}
template <class Row>
struct Column {
    const char* title = "";
    CellKind kind = CellKind::text;
    /// What the cell says. A column with number() and write() may leave it out.
    QString (*read)(const Row&, const Book&) = nullptr;
    /// Puts typed text into the row; null: the column is computed. Errors: one sentence.
    Result<void> (*edit)(Row&, const QString&, const Book&) = nullptr;
    /// The texts that edit() takes, for kind choice.
    QStringList (*choices)(const Row&, const Book&) = nullptr;
    /// The exact value behind the text, for sorting, sums and check marks.
    std::int64_t (*number)(const Row&) = nullptr;
    QString (*write)(std::int64_t, const Book&) = nullptr;
    /// As write(), where it takes the row to say what the number counts.
    QString (*writeIn)(std::int64_t, const Row&, const Book&) = nullptr;
    /// Where a computed value came from, in words; shown one click away.
    QString (*whereFrom)(const Row&, const Book&) = nullptr;
    /// Whether the cell means anything in this row; null: always.
    bool (*applies)(const Row&) = nullptr;
    bool summed = false;
    /// Room for so many letters before there is anything in the column; 0: what its title takes.
    int letters = 0;

    constexpr Column sum() const {
        Column other = *this;
        other.summed = true;
        return other;
    }
    /// The same column, not to be typed into.
    constexpr Column computed() const {
        Column other = *this;
        other.edit = nullptr;
        return other;
    }
    constexpr Column when(bool (*condition)(const Row&)) const {
        Column other = *this;
        other.applies = condition;
        return other;
    }
    constexpr Column from(QString (*words)(const Row&, const Book&)) const {
        Column other = *this;
        other.whereFrom = words;
        return other;
    }
    constexpr Column editedBy(Result<void> (*put)(Row&, const QString&, const Book&)) const {
        Column other = *this;
        other.edit = put;
        return other;
    }

    QString textOf(const Row& row, const Book& book) const {
        if (applies && !applies(row))
            return {};
        return read ? read(row, book) : written(number(row), row, book);
    }
    /// A number as the cell of this row would say it.
    QString written(std::int64_t value, const Row& row, const Book& book) const {
        if (writeIn)
            return writeIn(value, row, book);
        return write ? write(value, book) : QString::number(value);
    }
};

} // namespace miterbook
