// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/json_text.h"
#include "io/plan_refs.h"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One object of an exchange text and where it stands, for sentences: "openings[3] W4".
struct TextEntry {
    const Json* json = nullptr;
    std::string path;

    /// The text of a key; empty where there is none.
    std::string text(const char* key) const;
    bool has(const char* key) const { return json->is_object() && json->contains(key); }
    Error error(const Error& what) const { return {what.fault, path + ": " + what.sentence}; }
};

/// The entries of a list below an object; none where the key is missing. Errors: the key holds no
/// list of objects.
Result<std::vector<TextEntry>> entriesIn(const TextEntry& parent, std::string_view key);

/// The object below a key. Errors: it is no object.
Result<TextEntry> entryIn(const TextEntry& parent, const char* key);

/// Refuses keys of an object that are not among these.
Result<void> checkKeys(const TextEntry& entry, const std::vector<std::string_view>& known);

} // namespace miterbook
