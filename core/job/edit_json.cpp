// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit_json.h"

#include "job/row_json.h"

namespace miterbook {

namespace {

Json rowJson(const AnyRow& row) {
    return toJson(row.shape(), row.data());
}

Result<AnyRow> rowFromJson(std::string_view kind, const Json& json) {
    const auto number = kindOfTable(kind);
    if (!number)
        return badInput("There is no kind of row called " + std::string(kind) + ".");
    RowDraft draft(*number);
    if (auto read = readJson(json, draft.shape(), draft.data()); !read)
        return read.error();
    return std::move(draft).take();
}

/// Reads one side of a change; a side that is not there stays empty.
Result<void> readSide(
    const Json& json, std::string_view kind, const char* side, std::optional<AnyRow>& row) {
    const auto it = json.find(side);
    if (it == json.end())
        return {};
    auto read = rowFromJson(kind, *it);
    if (!read)
        return read.error();
    row = std::move(read).value();
    return {};
}

Result<Change> changeFromJson(const Json& json) {
    const auto kind = json.is_object() ? json.find("kind") : json.end();
    if (kind == json.end() || !kind->is_string())
        return badInput("It does not say what kind of row was changed.");
    const auto& name = kind->get_ref<const std::string&>();
    Change change;
    if (auto read = readSide(json, name, "before", change.before); !read)
        return read.error();
    if (auto read = readSide(json, name, "after", change.after); !read)
        return read.error();
    if (!change.before && !change.after)
        return badInput("It has neither a row before nor one after.");
    return change;
}

} // namespace

std::string changesToText(const std::vector<Change>& changes) {
    Json array = Json::array();
    for (const Change& change : changes) {
        Json entry;
        entry["kind"] = change.row().table();
        if (change.before)
            entry["before"] = rowJson(*change.before);
        if (change.after)
            entry["after"] = rowJson(*change.after);
        array.push_back(std::move(entry));
    }
    return jsonText(array);
}

Result<std::vector<Change>> changesFromText(std::string_view text) {
    const auto json = parseJson(text);
    if (!json)
        return json.error();
    if (!json->is_array())
        return badInput("The text is not a list of changes.");
    std::vector<Change> changes;
    changes.reserve(json->size());
    for (const Json& entry : *json) {
        auto change = changeFromJson(entry);
        if (!change) {
            return badInput("Change " + std::to_string(changes.size() + 1)
                + " cannot be read: " + change.error().sentence);
        }
        changes.push_back(std::move(change).value());
    }
    return changes;
}

} // namespace miterbook
