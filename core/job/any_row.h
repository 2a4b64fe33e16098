// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <algorithm>
#include <cstdint>
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

/// The table of a row in the book file, which names its kind.
inline std::string_view tableName(const AnyRow& row) {
    return std::visit(
        [](const auto& r) { return Describe<std::remove_cvref_t<decltype(r)>>::table; }, row);
}

/// What the user calls such a row: "opening".
inline std::string_view nounOf(const AnyRow& row) {
    return std::visit(
        [](const auto& r) { return Describe<std::remove_cvref_t<decltype(r)>>::noun; }, row);
}

inline std::int64_t idOf(const AnyRow& row) {
    return std::visit([](const auto& r) { return r.id.value(); }, row);
}

/// The highest id among the rows of an edit; 0 for none.
inline std::int64_t highestId(const Edit& edit) {
    std::int64_t highest = 0;
    for (const Change& change : edit.changes)
        highest = std::max(highest, idOf(change.row()));
    return highest;
}

/// Whether there is one row of this kind, of id 1: settings.
template <class Row>
inline constexpr bool onlyOne = std::is_same_v<Row, Shop> || std::is_same_v<Row, Practice>
    || std::is_same_v<Row, Terms> || std::is_same_v<Row, Bench> || std::is_same_v<Row, PayTerms>
    || std::is_same_v<Row, BillingSetup>;

} // namespace miterbook
