// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/exchange_form.h"

#include <algorithm>
#include <optional>
#include <string>
#include <type_traits>

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

/// Calls fn(field) for each field that stands in an exchange text as itself.
template <Described Row, class Fn>
void forEachTextField(Fn&& fn) {
    forEachField<Row>([&](const auto& field) {
        using Member = std::remove_cvref_t<decltype(std::declval<Row&>().*field.member)>;
        if constexpr (!impliedByPlace<Row, Member>()) {
            if (!isCallers<Row>(field.name))
                fn(field, ExchangeForm<Member>());
        }
    });
}

/// Mark and name lead their entry.
inline bool leads(std::string_view key) {
    return key == "mark" || key == "name";
}

/// Adds the fields in which a row differs from `start`, mark and name first.
template <Described Row>
void writeFields(const Row& row, const Row& start, const PlanRefs& refs, Json& object) {
    for (const bool leading : {true, false}) {
        forEachTextField<Row>([&](const auto& field, auto form) {
            if (leads(field.name) == leading && row.*field.member != start.*field.member)
                object[std::string(field.name)] = form.write(row.*field.member, refs);
        });
    }
}

/// A value as an object of the fields that are not at their default.
template <Described Row>
Json writeValue(const Row& row, const PlanRefs& refs) {
    Json object = Json::object();
    writeFields(row, Row(), refs, object);
    return object;
}

/// Sets one field of a row; nothing when the row has none of that key.
template <Described Row>
std::optional<Result<void>> readField(
    const std::string& key, const Json& json, const PlanRefs& refs, Row& row) {
    std::optional<Result<void>> result;
    forEachTextField<Row>([&](const auto& field, auto form) {
        if (result || field.name != key)
            return;
        auto value = form.read(json, refs);
        if (value)
            row.*field.member = std::move(value).value();
        result = value ? Result<void>() : Result<void>(value.error());
    });
    return result;
}

/// A row from its object: `start` with every field that the object has. Keys in `others` are the
/// caller's. Errors: a sentence that begins with the key.
template <Described Row>
Result<Row> readRow(const Json& json, Row start, const PlanRefs& refs,
    std::initializer_list<std::string_view> others = {}) {
    if (!json.is_object())
        return badInput("an entry in braces is needed.");
    for (const auto& [key, value] : json.items()) {
        if (std::ranges::find(others, key) != others.end())
            continue;
        const auto read = readField(key, value, refs, start);
        if (!read)
            return badInput("\"" + key + "\" means nothing here.");
        if (!*read)
            return Error{read->error().fault, key + ": " + read->error().sentence};
    }
    return start;
}

} // namespace miterbook
