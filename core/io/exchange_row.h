// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/one_of.h"
#include "io/exchange_form.h"

#include <cstddef>
#include <initializer_list>
#include <string_view>
#include <type_traits>
#include <vector>

namespace miterbook {

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

/// Made once for the whole run of the program. Compiled once as well, in exchange_row.cpp, which
/// lists the kinds that other files place.
template <Described Row>
const ExchangeFields& exchangeFields();

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
