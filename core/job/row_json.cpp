// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_json.h"

#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

namespace {

using Kind = ValueShape::Kind;

Json listJson(const ValueShape& shape, const void* list) {
    Json array = Json::array();
    for (std::size_t i = 0; i < shape.size(list); ++i)
        array.push_back(toJson(*shape.element, shape.at(list, i)));
    return array;
}

Result<void> readList(const Json& json, const ValueShape& shape, void* list) {
    if (!json.is_array())
        return unreadable(json);
    shape.clear(list);
    for (const Json& each : json) {
        if (auto read = readJson(each, *shape.element, shape.append(list)); !read)
            return read;
    }
    return {};
}

/// Whether a value that is neither list nor row could be read.
bool readPlain(const Json& json, const ValueShape& shape, void* value) {
    switch (shape.kind) {
    case Kind::yesNo:
        return json.is_boolean() && shape.setNumber(value, json.get<bool>() ? 1 : 0);
    case Kind::text:
    case Kind::date:
        return json.is_string() && shape.setText(value, json.get_ref<const std::string&>());
    default:
        const auto number = wholeNumber(json);
        return number && shape.setNumber(value, *number);
    }
}

/// What is said of an object with a field that the shape does not name.
Error unknownField(const Json& object, const RowShape& shape) {
    const auto names = shape.names();
    for (const auto& [name, value] : object.items()) {
        if (std::ranges::find(names, name) == names.end())
            return badInput("It has a field " + inQuotes(name) + " that is not known.");
    }
    return unreadable(object);
}

} // namespace

Json toJson(const ValueShape& shape, const void* value) {
    switch (shape.kind) {
    case Kind::yesNo:
        return shape.number(value) != 0;
    case Kind::text:
    case Kind::date:
        return shape.text(value);
    case Kind::list:
        return listJson(shape, value);
    case Kind::row:
        return toJson(shape.row(), value);
    default:
        return shape.number(value);
    }
}

Json toJson(const RowShape& shape, const void* row) {
    Json object = Json::object();
    for (const FieldShape& field : shape.fields)
        object.emplace(std::string(field.name), toJson(*field.value, field.in(row)));
    return object;
}

Result<void> readJson(const Json& json, const ValueShape& shape, void* value) {
    if (shape.kind == Kind::list)
        return readList(json, shape, value);
    if (shape.kind == Kind::row)
        return readJson(json, shape.row(), value);
    return readPlain(json, shape, value) ? Result<void>() : unreadable(json);
}

Result<void> readJson(const Json& json, const RowShape& shape, void* row) {
    if (!json.is_object())
        return unreadable(json);
    std::size_t known = 0;
    for (const FieldShape& field : shape.fields) {
        const auto it = json.find(std::string(field.name));
        if (it == json.end())
            continue;
        ++known;
        if (const auto read = readJson(*it, *field.value, field.in(row)); !read) {
            return badInput(
                "The " + std::string(field.name) + " cannot be read: " + read.error().sentence);
        }
    }
    return known == json.size() ? Result<void>() : unknownField(json, shape);
}

std::string jsonText(const Json& json) {
    // Rows are checked for sound UTF-8 before they get here; a stray byte must still not throw.
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<Json> parseJson(std::string_view text) {
    Json json = Json::parse(text.begin(), text.end(), nullptr, false);
    if (json.is_discarded())
        return badInput("The text is not JSON.");
    return json;
}

std::optional<std::int64_t> wholeNumber(const Json& json) {
    if (!json.is_number_integer())
        return std::nullopt;
    constexpr auto largest = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
    if (json.is_number_unsigned() && json.get<std::uint64_t>() > largest)
        return std::nullopt;
    return json.get<std::int64_t>();
}

Error unreadable(const Json& found) {
    constexpr std::size_t longest = 60;
    std::string text = found.is_null() ? "nothing" : jsonText(found);
    if (text.size() > longest)
        text = text.substr(0, longest) + "...";
    return badInput(text + " stands there.");
}

} // namespace miterbook
