// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/book_rows.h"

#include <cassert>

namespace miterbook {

namespace {

/// The rows of a kind where it is always in memory; nullptr for other kinds. `In` is Book or const
/// Book.
template <class In, class Row>
auto rowsIn(In& book) -> decltype(&book.jobs.template of<Plan>().rows()) {
    if constexpr (PriceTables::holds<Row>)
        return &book.prices.template of<Row>().rows();
    else if constexpr (JobTables::holds<Row>)
        return &book.jobs.template of<Row>().rows();
    else
        return nullptr;
}

/// The same for a kind that hangs below a plan.
template <class In, class Row>
auto rowsBelow(In& sheet) -> decltype(&sheet.template of<Level>().rows()) {
    if constexpr (belowPlan<Row>)
        return &sheet.template of<Row>().rows();
    else
        return nullptr;
}

template <class In>
constexpr auto inBook = BookRows::mapped([]<class Row>(RowKind<Row>) { return &rowsIn<In, Row>; });

template <class In>
constexpr auto inSheet
    = BookRows::mapped([]<class Row>(RowKind<Row>) { return &rowsBelow<In, Row>; });

constexpr auto below = BookRows::mapped([]<class Row>(RowKind<Row>) { return belowPlan<Row>; });

std::optional<AnyRow> rowOf(const RowMap& rows, std::size_t kind, std::int64_t id) {
    auto row = rows.share(id);
    return row ? std::optional<AnyRow>(std::in_place, kind, id, std::move(row)) : std::nullopt;
}

} // namespace

bool isBelowPlan(std::size_t kind) {
    return below[kind];
}

const RowMap& rowMap(const SheetRows& rows, std::size_t kind) {
    assert(isBelowPlan(kind));
    return *inSheet<const SheetRows>[kind](rows);
}

RowMap& rowMap(SheetRows& rows, std::size_t kind) {
    assert(isBelowPlan(kind));
    return *inSheet<SheetRows>[kind](rows);
}

const RowMap& rowMap(const Book& book, std::size_t kind) {
    assert(!isBelowPlan(kind));
    return kind == kindOf<TimeEntry> ? book.time.read().rows() : *inBook<const Book>[kind](book);
}

RowMap& rowMap(Book& book, std::size_t kind) {
    assert(!isBelowPlan(kind) && kind != kindOf<TimeEntry>);
    return *inBook<Book>[kind](book);
}

std::optional<AnyRow> findAnyRow(const Book& book, std::size_t kind, std::int64_t id) {
    if (!isBelowPlan(kind))
        return rowOf(rowMap(book, kind), kind, id);
    for (const auto& [plan, rows] : book.sheets) {
        if (auto row = rowOf(rowMap(rows, kind), kind, id))
            return row;
    }
    return std::nullopt;
}

std::optional<AnyRow> findSame(const Book& book, const AnyRow& row) {
    const RowMap& rows = isBelowPlan(row.kind()) ? rowMap(book.sheet(planOf(row)), row.kind())
                                                 : rowMap(book, row.kind());
    return rowOf(rows, row.kind(), row.id());
}

} // namespace miterbook
