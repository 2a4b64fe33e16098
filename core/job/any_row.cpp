// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/any_row.h"

#include <algorithm>

namespace miterbook {

const RowShape& shapeOf(const AnyRow& row) {
    return *std::visit([]<class Row>(const Row&) { return &rowShape<Row>(); }, row);
}

const void* dataOf(const AnyRow& row) {
    return std::visit([](const auto& r) -> const void* { return &r; }, row);
}

void* dataOf(AnyRow& row) {
    return std::visit([](auto& r) -> void* { return &r; }, row);
}

std::optional<AnyRow> emptyRow(std::string_view table) {
    std::optional<AnyRow> made;
    forEachRowKind([&]<class Row>(RowKind<Row>) {
        if (Describe<Row>::table == table)
            made.emplace(Row());
    });
    return made;
}

std::string_view tableName(const AnyRow& row) {
    return shapeOf(row).table;
}

std::string_view nounOf(const AnyRow& row) {
    return shapeOf(row).noun;
}

std::int64_t idOf(const AnyRow& row) {
    return std::visit([](const auto& r) { return r.id.value(); }, row);
}

bool sameContent(const AnyRow& a, const AnyRow& b) {
    return a == b;
}

std::int64_t highestId(const Edit& edit) {
    std::int64_t highest = 0;
    for (const Change& change : edit.changes)
        highest = std::max(highest, idOf(change.row()));
    return highest;
}

} // namespace miterbook
