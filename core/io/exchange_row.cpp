// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/exchange_row.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Mark and name lead their entry.
bool leads(std::string_view key) {
    return key == "mark" || key == "name";
}

} // namespace

void writeFields(const ExchangeFields& fields, const void* row, const void* start,
    const PlanRefs& refs, Json& object) {
    for (const bool leading : {true, false}) {
        for (const ExchangeField& field : fields) {
            if (leads(field.name) == leading && !field.value->same(field.in(row), field.in(start)))
                object[std::string(field.name)] = field.value->write(field.in(row), refs);
        }
    }
}

Result<void> readFields(const ExchangeFields& fields, const Json& json, const PlanRefs& refs,
    void* row, std::initializer_list<std::string_view> others) {
    if (!json.is_object())
        return badInput("an entry in braces is needed.");
    for (const auto& [key, value] : json.items()) {
        if (std::ranges::find(others, key) != others.end())
            continue;
        const auto field = std::ranges::find(fields, key, &ExchangeField::name);
        if (field == fields.end())
            return badInput("\"" + key + "\" means nothing here.");
        if (const auto read = field->value->read(value, refs, field->in(row)); !read)
            return Error{read.error().fault, key + ": " + read.error().sentence};
    }
    return {};
}

} // namespace miterbook
