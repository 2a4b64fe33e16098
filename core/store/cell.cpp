// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/cell.h"

#include "job/row_json.h"

#include <QString>

namespace miterbook {

QVariant numberCell(std::int64_t number) {
    return QVariant(static_cast<qlonglong>(number));
}

QVariant textCell(std::string_view text) {
    if (text.empty())
        return QVariant(QStringLiteral("")); // a null QString would be bound as NULL
    return QVariant(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())));
}

QVariant referenceCell(std::int64_t id) {
    return id == 0 ? QVariant(QMetaType::fromType<qlonglong>()) : numberCell(id);
}

QVariant dateCell(std::string_view iso) {
    return iso.empty() ? QVariant(QMetaType::fromType<QString>()) : textCell(iso);
}

std::optional<std::int64_t> cellNumber(const QVariant& cell) {
    if (cell.isNull() || cell.metaType() != QMetaType::fromType<qlonglong>())
        return std::nullopt;
    return cell.toLongLong();
}

std::optional<std::int64_t> cellReference(const QVariant& cell) {
    return cell.isNull() ? 0 : cellNumber(cell);
}

std::string cellText(const QVariant& cell) {
    return cell.toString().toStdString();
}

QVariant toCell(const ValueShape& shape, const void* value) {
    switch (shape.kind) {
    case ValueShape::Kind::reference:
        return referenceCell(shape.number(value));
    case ValueShape::Kind::date:
        return dateCell(shape.text(value));
    case ValueShape::Kind::text:
        return textCell(shape.text(value));
    case ValueShape::Kind::list:
    case ValueShape::Kind::row:
        return textCell(jsonText(toJson(shape, value)));
    default:
        return numberCell(shape.number(value));
    }
}

namespace {

bool readNumber(std::optional<std::int64_t> number, const ValueShape& shape, void* value) {
    return number && shape.setNumber(value, *number);
}

bool readInnerJson(const QVariant& cell, const ValueShape& shape, void* value) {
    const auto json = parseJson(cellText(cell));
    return json && readJson(*json, shape, value).ok();
}

} // namespace

bool readCell(const QVariant& cell, const ValueShape& shape, void* value) {
    switch (shape.kind) {
    case ValueShape::Kind::reference:
        return readNumber(cellReference(cell), shape, value);
    case ValueShape::Kind::date:
        return shape.setText(value, cellText(cell));
    case ValueShape::Kind::text:
        return !cell.isNull() && shape.setText(value, cellText(cell));
    case ValueShape::Kind::list:
    case ValueShape::Kind::row:
        return readInnerJson(cell, shape, value);
    default:
        return readNumber(cellNumber(cell), shape, value);
    }
}

} // namespace miterbook
