// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/plan_text_source.h"

#include <algorithm>

namespace miterbook {

namespace {

std::string below(const TextEntry& parent, std::string_view key) {
    return (parent.path.empty() ? "" : parent.path + ": ") + std::string(key);
}

/// The mark or name by which a person finds the entry.
std::string spoken(const TextEntry& entry) {
    for (const char* key : {"mark", "name", "changes", "removes"}) {
        if (const std::string text = entry.text(key); !text.empty())
            return " " + text;
    }
    return {};
}

} // namespace

std::string TextEntry::text(const char* key) const {
    if (!has(key) || !(*json)[key].is_string())
        return {};
    return (*json)[key].get<std::string>();
}

Result<std::vector<TextEntry>> entriesIn(const TextEntry& parent, std::string_view key) {
    std::vector<TextEntry> entries;
    const auto it = parent.json->find(std::string(key));
    if (it == parent.json->end())
        return entries;
    if (!it->is_array())
        return badInput(below(parent, key) + ": a list in square brackets is needed.");
    for (const Json& each : *it) {
        TextEntry entry{&each, below(parent, key) + "[" + std::to_string(entries.size() + 1) + "]"};
        if (!each.is_object())
            return entry.error(badInput("an entry in braces is needed."));
        entry.path += spoken(entry);
        entries.push_back(std::move(entry));
    }
    return entries;
}

Result<TextEntry> entryIn(const TextEntry& parent, const char* key) {
    TextEntry entry{&parent.json->at(key), below(parent, key)};
    if (!entry.json->is_object())
        return entry.error(badInput("an entry in braces is needed."));
    return entry;
}

Result<void> checkKeys(const TextEntry& entry, const std::vector<std::string_view>& known) {
    for (const auto& [key, value] : entry.json->items()) {
        if (std::ranges::find(known, std::string_view(key)) == known.end())
            return badInput((entry.path.empty() ? "" : entry.path + ": ") + "\"" + key
                + "\" means nothing here.");
    }
    return {};
}

} // namespace miterbook
