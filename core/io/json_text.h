// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/row_json.h"

#include <string>
#include <string_view>

namespace miterbook {

/// JSON that a person may have written. Errors: one sentence with line and column for what is not
/// JSON, or naming a key that stands twice in one object.
Result<Json> readJsonText(std::string_view text);

/// JSON for people and line-by-line comparison: what fits into 100 columns stands in one line, but
/// each entry of an outermost list has its own. Ends with a line end.
std::string layOutJson(const Json& json);

} // namespace miterbook
