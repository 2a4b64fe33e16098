// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_look.h"

#include <QBrush>
#include <QFont>
#include <QGuiApplication>
#include <QPalette>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

bool isNumber(CellKind kind) {
    switch (kind) {
    case CellKind::number:
    case CellKind::length:
    case CellKind::run:
    case CellKind::runPrice:
    case CellKind::floor:
    case CellKind::money:
    case CellKind::percent:
        return true;
    default:
        return false;
    }
}

QVariant alignmentOf(CellKind kind) {
    return QVariant::fromValue(
        (isNumber(kind) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
}

QVariant fontOf(RowMark mark) {
    if (mark == RowMark::plain)
        return {};
    QFont font = QGuiApplication::font();
    font.setStrikeOut(mark == RowMark::removed);
    font.setItalic(mark != RowMark::removed);
    return font;
}

QVariant inkOf(RowMark mark) {
    if (mark != RowMark::removed)
        return {};
    return QBrush(QGuiApplication::palette().color(QPalette::PlaceholderText));
}

QString wordOf(RowMark mark) {
    switch (mark) {
    case RowMark::plain:
        return {};
    case RowMark::added:
        return u"added"_s;
    case RowMark::changed:
        return u"changed"_s;
    case RowMark::removed:
        return u"removed"_s;
    }
    return {};
}

} // namespace miterbook
