// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_json.h"

#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

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

Error unknownField(const Json& object, const std::vector<std::string_view>& names) {
    for (const auto& [name, value] : object.items()) {
        if (std::ranges::find(names, name) == names.end())
            return badInput("It has a field " + inQuotes(name) + " that is not known.");
    }
    return unreadable(object);
}

void addField(Json& object, std::string_view name, Json value) {
    object.emplace(std::string(name), std::move(value));
}

FieldReader::FieldReader(const Json& object)
    : m_object(object) {
    if (!object.is_object())
        m_result = unreadable(object);
}

const Json* FieldReader::next(std::string_view name) {
    if (!m_result)
        return nullptr;
    const auto it = m_object.find(std::string(name));
    if (it == m_object.end())
        return nullptr;
    m_name = name;
    ++m_known;
    return &*it;
}

void FieldReader::take(const Result<void>& read) {
    if (!read) {
        m_result = badInput(
            "The " + std::string(m_name) + " cannot be read: " + read.error().sentence);
    }
}

} // namespace miterbook
