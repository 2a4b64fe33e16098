// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>

namespace miterbook {

/// One member of a row: its name (column of the book file and key of exchange text) and where it is.
template <class Row, class Member>
struct Field {
    std::string_view name;
    Member Row::*member;
};

template <class Row, class Member>
constexpr Field<Row, Member> field(std::string_view name, Member Row::*member) {
    return {name, member};
}

/// Specialised beside each kind of row:
///   static constexpr std::string_view table;  // table in the book file, snake_case
///   static constexpr std::string_view noun;   // what the user calls one: "opening"
///   static constexpr auto fields = std::tuple{field("id", &Row::id), ...};
/// The one description serves the store, the journal and the plan exchange text.
template <class Row>
struct Describe;

template <class Row>
concept Described = requires {
    Describe<Row>::table;
    Describe<Row>::fields;
};

/// Calls fn(field) for each field of Row, in order.
template <Described Row, class Fn>
constexpr void forEachField(Fn&& fn) {
    std::apply([&](const auto&... each) { (fn(each), ...); }, Describe<Row>::fields);
}

template <Described Row>
inline constexpr std::size_t fieldCount
    = std::tuple_size_v<std::remove_cvref_t<decltype(Describe<Row>::fields)>>;

} // namespace miterbook
