// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/row_json.h"
#include "job/stored_form.h"

#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// What is bound for a value and what is read back. The functions that are no templates keep the
/// templates below small: they are made for some hundred members.
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
template <StoredWhole T>
QVariant toCell(const T& value) {
    if constexpr (isId<T>)
        return referenceCell(value.value());
    else
        return numberCell(WholeForm<T>::write(value));
}

template <StoredText T>
QVariant toCell(const T& value) {
    if constexpr (std::is_same_v<T, Date>)
        return dateCell(TextForm<T>::write(value));
    else
        return textCell(TextForm<T>::write(value));
}

template <class T>
QVariant toCell(const std::vector<T>& list) {
    return textCell(jsonText(toJson(list)));
}

/// Reads what toCell made; false for what no such value can be, which is damage.
template <StoredWhole T>
bool readCell(const QVariant& cell, T& value) {
    const auto number = isId<T> ? cellReference(cell) : cellNumber(cell);
    const auto read = number ? WholeForm<T>::read(*number) : std::nullopt;
    if (read)
        value = *read;
    return read.has_value();
}

template <StoredText T>
bool readCell(const QVariant& cell, T& value) {
    if (cell.isNull() && !std::is_same_v<T, Date>)
        return false;
    auto read = TextForm<T>::read(cellText(cell));
    if (read)
        value = *std::move(read);
    return read.has_value();
}

template <class T>
bool readCell(const QVariant& cell, std::vector<T>& list) {
    const auto json = parseJson(cellText(cell));
    return json && readJson(*json, list).ok();
}

} // namespace miterbook
