// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

namespace miterbook {

/// One member of a row: its name (column of the book file, key of exchange text) and where it is.
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
///   static constexpr void allFields(auto&& take) { take(field("id", &Row::id), ...); }
/// The one description serves the store, the journal and the plan exchange text. The fields are
/// handed over in one call, not kept in a tuple: each file that sees a row would make the tuple.
template <class Row>
struct Describe;

template <class Row>
concept Described = requires {
    Describe<Row>::table;
};

/// A field whose row has no type here: its name and where it is in a row of its kind.
struct FieldPlace {
    std::string_view name;
    std::size_t offset = 0; ///< bytes from the start of the row

    const void* in(const void* row) const { return static_cast<const std::byte*>(row) + offset; }
    void* in(void* row) const { return static_cast<std::byte*>(row) + offset; }
};

template <class Row, class Member>
FieldPlace placeOf(const Row& sample, const Field<Row, Member>& field) {
    const auto* start = reinterpret_cast<const std::byte*>(&sample);
    const auto* place = reinterpret_cast<const std::byte*>(&(sample.*field.member));
    return {field.name, static_cast<std::size_t>(place - start)};
}

/// Calls fn(field) for each field of Row, in order.
template <Described Row, class Fn>
constexpr void forEachField(Fn&& fn) {
    Describe<Row>::allFields([&](const auto&... each) { (fn(each), ...); });
}

template <Described Row>
constexpr std::size_t countFields() {
    std::size_t count = 0;
    Describe<Row>::allFields([&](const auto&... each) { count = sizeof...(each); });
    return count;
}

template <Described Row>
inline constexpr std::size_t fieldCount = countFields<Row>();

} // namespace miterbook
