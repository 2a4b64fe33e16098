// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/row_shape.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace miterbook {

using Json = nlohmann::ordered_json;

/// Values and rows as JSON, by their shape. Whole-number values (lengths in nanometres, money in
/// cents, ids) are integers, yes and no are true and false, trade words, texts and dates are
/// strings, lists are arrays, and a described value is an object with a key for each field.
Json toJson(const ValueShape& shape, const void* value);
Json toJson(const RowShape& shape, const void* row);

/// The value that toJson wrote. Errors: one sentence naming the field that cannot be read; a row
/// may lack fields (it was written before they were there; they keep their starting value) and has
/// none that its shape does not name.
Result<void> readJson(const Json& json, const ValueShape& shape, void* value);
Result<void> readJson(const Json& json, const RowShape& shape, void* row);

template <class T>
Json toJson(const T& value) {
    if constexpr (Described<T>)
        return toJson(rowShape<T>(), &value);
    else
        return toJson(valueShape<T>, &value);
}

template <class T>
Result<void> readJson(const Json& json, T& value) {
    if constexpr (Described<T>)
        return readJson(json, rowShape<T>(), &value);
    else
        return readJson(json, valueShape<T>, &value);
}

/// JSON in one line of UTF-8; and back, without exceptions.
std::string jsonText(const Json& json);
Result<Json> parseJson(std::string_view text);

/// What is said of a value that cannot be read: `found` shortened to a few words.
Error unreadable(const Json& found);

/// The whole number that stands there; nothing for anything else, a fraction and 2^63 among them.
std::optional<std::int64_t> wholeNumber(const Json& json);

} // namespace miterbook
