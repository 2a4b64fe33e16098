// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_title.h"

namespace miterbook {

namespace {

template <class Row>
std::string nameOf(const Row& row) {
    if constexpr (requires { row.name; }) {
        if (!row.name.empty())
            return row.name;
    }
    if constexpr (requires { row.mark; })
        return row.mark;
    else if constexpr (std::is_same_v<Row, TimeEntry>)
        return isoDate(row.date);
    else if constexpr (requires { row.task; })
        return std::string(word(row.task));
    else
        return {};
}

} // namespace

std::string titleOf(const AnyRow& row) {
    const std::string noun(row.noun());
    const std::string name = visitRow(row, [](const auto& each) { return nameOf(each); });
    if (name.empty())
        return noun + " " + std::to_string(row.id());
    return noun + " \"" + name + "\"";
}

} // namespace miterbook
