// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/result.h"
#include "job/stored_form.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

using Json = nlohmann::ordered_json;

/// Values and rows as JSON, driven by Describe. Whole-number values (lengths in nanometres, money
/// in cents, ids) are integers, yes and no are true and false, trade words, texts and dates are
/// strings, lists are arrays, and a described value is an object with a key for each field.
template <StoredWhole T>
Json toJson(const T& value);
template <StoredText T>
Json toJson(const T& value);
template <class T>
Json toJson(const std::vector<T>& list);
template <Described Row>
Json toJson(const Row& row);

/// The value that toJson wrote. Errors: one sentence naming the field that cannot be read; a row may
/// lack fields (it was written before they were there; they keep their starting value) and has none
/// that Describe does not name.
template <StoredWhole T>
Result<void> readJson(const Json& json, T& value);
template <StoredText T>
Result<void> readJson(const Json& json, T& value);
template <class T>
Result<void> readJson(const Json& json, std::vector<T>& list);
template <Described Row>
Result<void> readJson(const Json& json, Row& row);

/// JSON in one line of UTF-8; and back, without exceptions.
std::string jsonText(const Json& json);
Result<Json> parseJson(std::string_view text);

/// The whole number that stands there; nothing for anything else, a fraction and 2^63 among them.
std::optional<std::int64_t> wholeNumber(const Json& json);

/// What is said of an object with a field that is none of `names`.
Error unknownField(const Json& object, const std::vector<std::string_view>& names);

/// What is said of a value that cannot be read: `found` shortened to a few words.
Error unreadable(const Json& found);

void addField(Json& object, std::string_view name, Json value);

/// Looks up the fields of an object one by one and keeps the first failure. What is the same for
/// every field of every row stands here, so that it is compiled once.
class FieldReader {
public:
    explicit FieldReader(const Json& object);

    /// The value of a field; nullptr when it is missing or reading has failed before.
    const Json* next(std::string_view name);
    /// How reading the value of the last `next` went.
    void take(const Result<void>& read);
    /// Whether the object has no field but those that were asked for, as far as reading went.
    bool allRead() const { return !m_result || m_known == m_object.size(); }
    const Result<void>& result() const { return m_result; }

private:
    const Json& m_object;
    Result<void> m_result;
    std::string_view m_name;
    std::size_t m_known = 0;
};

// ---------------------------------------------------------------------------------------------

template <StoredWhole T>
Json toJson(const T& value) {
    if constexpr (std::is_same_v<T, bool>)
        return value;
    else
        return WholeForm<T>::write(value);
}

template <StoredText T>
Json toJson(const T& value) {
    return TextForm<T>::write(value);
}

template <class T>
Json toJson(const std::vector<T>& list) {
    Json array = Json::array();
    for (const T& each : list)
        array.push_back(toJson(each));
    return array;
}

template <Described Row>
Json toJson(const Row& row) {
    Json object = Json::object();
    forEachField<Row>([&](const auto& field) {
        addField(object, field.name, toJson(row.*field.member));
    });
    return object;
}

template <StoredWhole T>
Result<void> readJson(const Json& json, T& value) {
    if constexpr (std::is_same_v<T, bool>) {
        if (!json.is_boolean())
            return unreadable(json);
        value = json.get<bool>();
    } else {
        const auto number = wholeNumber(json);
        const auto read = number ? WholeForm<T>::read(*number) : std::nullopt;
        if (!read)
            return unreadable(json);
        value = *read;
    }
    return {};
}

template <StoredText T>
Result<void> readJson(const Json& json, T& value) {
    if (!json.is_string())
        return unreadable(json);
    auto read = TextForm<T>::read(json.get_ref<const std::string&>());
    if (!read)
        return unreadable(json);
    value = *std::move(read);
    return {};
}

template <class T>
Result<void> readJson(const Json& json, std::vector<T>& list) {
    if (!json.is_array())
        return unreadable(json);
    list.clear();
    list.reserve(json.size());
    for (const Json& each : json) {
        if (auto read = readJson(each, list.emplace_back()); !read)
            return read;
    }
    return {};
}

template <Described Row>
std::vector<std::string_view> fieldNames() {
    std::vector<std::string_view> names;
    forEachField<Row>([&](const auto& field) { names.push_back(field.name); });
    return names;
}

template <Described Row>
Result<void> readJson(const Json& json, Row& row) {
    FieldReader reader(json);
    forEachField<Row>([&](const auto& field) {
        if (const Json* value = reader.next(field.name))
            reader.take(readJson(*value, row.*field.member));
    });
    return reader.allRead() ? reader.result() : unknownField(json, fieldNames<Row>());
}

} // namespace miterbook
