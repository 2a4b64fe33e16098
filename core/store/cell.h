// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/row_shape.h"

#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// What is bound for a value and what is read back.
QVariant numberCell(std::int64_t number);
QVariant textCell(std::string_view text);
/// NULL for none.
QVariant referenceCell(std::int64_t id);
QVariant dateCell(std::string_view iso);

/// Nothing for a cell that holds no whole number, NULL among them.
std::optional<std::int64_t> cellNumber(const QVariant& cell);
/// As cellNumber, and 0 for NULL.
std::optional<std::int64_t> cellReference(const QVariant& cell);
/// Empty for NULL.
std::string cellText(const QVariant& cell);

/// The cell of a row's member: a whole number, text, NULL for no reference and no date, and the
/// JSON text of a list.
QVariant toCell(const ValueShape& shape, const void* value);

/// Reads what toCell made; false for what no such value can be, which is damage.
bool readCell(const QVariant& cell, const ValueShape& shape, void* value);

template <class T>
QVariant toCell(const T& value) {
    return toCell(valueShape<T>, &value);
}
template <class T>
bool readCell(const QVariant& cell, T& value) {
    return readCell(cell, valueShape<T>, &value);
}

} // namespace miterbook
