// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "job/row_shape.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <type_traits>

namespace miterbook {

template <class T>
struct RowKind {
    using Row = T;
};

template <class Variant>
struct RowKinds;

template <class... Rows>
struct RowKinds<std::variant<Rows...>> {
    template <class Fn>
    static void forEach(Fn&& fn) {
        (fn(RowKind<Rows>()), ...);
    }
};

/// Calls fn(RowKind<Row>) for every kind of row a book has, in the order of AnyRow.
template <class Fn>
void forEachRowKind(Fn&& fn) {
    RowKinds<AnyRow>::forEach(fn);
}

/// What a row is made of, without its type.
const RowShape& shapeOf(const AnyRow& row);
/// The row itself, to be read and written by its shape.
void* dataOf(AnyRow& row);
const void* dataOf(const AnyRow& row);
/// A new row of the kind that a table of the book file holds; nothing where there is no such table.
std::optional<AnyRow> emptyRow(std::string_view table);

/// The table of a row in the book file, which names its kind.
std::string_view tableName(const AnyRow& row);
/// What the user calls such a row: "opening".
std::string_view nounOf(const AnyRow& row);
std::int64_t idOf(const AnyRow& row);
/// Whether two rows are of the same kind and say the same.
bool sameContent(const AnyRow& a, const AnyRow& b);

/// The highest id among the rows of an edit; 0 for none.
std::int64_t highestId(const Edit& edit);

/// Whether there is one row of this kind, of id 1: settings.
template <class Row>
inline constexpr bool onlyOne
    = std::is_same_v<Row,
          Shop> || std::is_same_v<Row, Practice> || std::is_same_v<Row, Terms> || std::is_same_v<Row, Bench> || std::is_same_v<Row, PayTerms> || std::is_same_v<Row, BillingSetup>;

} // namespace miterbook
