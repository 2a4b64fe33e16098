// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/cell.h"

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

} // namespace miterbook
