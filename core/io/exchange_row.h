// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/exchange_form.h"

#include <cstddef>
#include <initializer_list>
#include <string_view>
#include <type_traits>
#include <vector>

namespace miterbook {

template <class T, class... Others>
inline constexpr bool isOneOf = (std::is_same_v<T, Others> || ...);

/// Members that an exchange text says by where a row stands in it (its plan, its variant) or by
/// keys of its own (changes, removes).
template <class Row, class Member>
constexpr bool impliedByPlace() {
    if constexpr (std::is_same_v<Row, Stick> && std::is_same_v<Member, Id<Profile>>)
        return true;
    if constexpr (std::is_same_v<Row, Variant> && std::is_same_v<Member, VariantKind>)
        return true;
    return isOneOf<Member, Id<Row>, Id<Plan>, Id<PlanSet>, Id<House>, Id<Builder>, Id<Variant>>;
}

/// Position and removal are said by the caller too.
template <class Row>
constexpr bool isCallers(std::string_view key) {
    return Overlaid<Row> && (key == "position" || key == "removed");
}

/// How values of one type stand in an exchange text; a `value` points at one.
struct ExchangeValue {
    Json (*write)(const void* value, const PlanRefs& refs);
    Result<void> (*read)(const Json& json, const PlanRefs& refs, void* value);
    bool (*same)(const void* a, const void* b);
};

/// A field that stands in an exchange text as itself.
struct ExchangeField : FieldPlace {
    const ExchangeValue* value = nullptr;
};

using ExchangeFields = std::vector<ExchangeField>;

template <class T>
inline constexpr ExchangeValue exchangeValue{[](const void* value, const PlanRefs& refs) -> Json {
                                                 return ExchangeForm<T>::write(
                                                     *static_cast<const T*>(value), refs);
                                             },
    [](const Json& json, const PlanRefs& refs, void* value) -> Result<void> {
        auto read = ExchangeForm<T>::read(json, refs);
        if (!read)
            return read.error();
        *static_cast<T*>(value) = std::move(read).value();
        return {};
    },
    [](const void* a, const void* b) {
        return *static_cast<const T*>(a) == *static_cast<const T*>(b);
    }};

/// Made once for the whole run of the program.
template <Described Row>
const ExchangeFields& exchangeFields() {
    static const ExchangeFields fields = [] {
        ExchangeFields made;
        const Row sample{};
        forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
            if constexpr (!impliedByPlace<Row, Member>()) {
                if (!isCallers<Row>(field.name))
                    made.push_back({placeOf(sample, field), &exchangeValue<Member>});
            }
        });
        return made;
    }();
    return fields;
}

/// Adds the fields in which a row differs from `start`, mark and name first.
void writeFields(const ExchangeFields& fields, const void* row, const void* start,
    const PlanRefs& refs, Json& object);

/// Sets the fields of a row that the object has. Keys in `others` are the caller's. Errors: a
/// sentence that begins with the key.
Result<void> readFields(const ExchangeFields& fields, const Json& json, const PlanRefs& refs,
    void* row, std::initializer_list<std::string_view> others);

template <Described Row>
void writeFields(const Row& row, const Row& start, const PlanRefs& refs, Json& object) {
    writeFields(exchangeFields<Row>(), &row, &start, refs, object);
}

/// A value as an object of the fields that are not at their default.
template <Described Row>
Json writeValue(const Row& row, const PlanRefs& refs) {
    Json object = Json::object();
    writeFields(row, Row(), refs, object);
    return object;
}

/// A row from its object: `start` with every field that the object has, as readFields does.
template <Described Row>
Result<Row> readRow(const Json& json, Row start, const PlanRefs& refs,
    std::initializer_list<std::string_view> others = {}) {
    if (auto read = readFields(exchangeFields<Row>(), json, refs, &start, others); !read)
        return read.error();
    return start;
}

} // namespace miterbook
