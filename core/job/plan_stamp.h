// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/row_json.h"

namespace miterbook {

/// A number that tells one text from another (FNV-1a, 64 bits).
std::int64_t stampOf(std::string_view text);

/// What stays of a plan's row when all is taken off that does not say what is built: which row it
/// is, where it stands in its table, and which elevation or option it comes from.
template <class Row>
Row withoutPlace(Row row) {
    row.id = {};
    if constexpr (requires { row.plan; })
        row.plan = {};
    if constexpr (requires { row.position; })
        row.position = 0;
    if constexpr (requires { row.replaces; }) {
        row.variant = {};
        row.replaces = {};
    }
    return row;
}

/// The stamp of a row of a builder's plan: another as soon as something else is to be built.
template <class Row>
std::int64_t stampOf(const Row& row) {
    return stampOf(std::string_view(jsonText(toJson(withoutPlace(row)))));
}

} // namespace miterbook
