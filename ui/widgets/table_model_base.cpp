// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_model_base.h"

#include "desk/text.h"

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

TableModelBase::TableModelBase(Desk& desk, QObject* parent)
    : QAbstractTableModel(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, [this] { refresh(); });
}

int TableModelBase::realRows() const {
    return rowCount() - (blankRow() < 0 ? 0 : 1);
}

QString TableModelBase::titleWithUnit(int column) const {
    const Shop& shop = book().prices.shop();
    switch (kind(column)) {
    case CellKind::length:
        if (shop.unit == LengthUnit::feetInches)
            return title(column);
        return title(column) + (shop.unit == LengthUnit::inches ? u", in"_s : u", mm"_s);
    case CellKind::money:
        return title(column) + u", "_s + text(shop.currency);
    case CellKind::percent:
        return title(column) + u", %"_s;
    default:
        return title(column);
    }
}

bool TableModelBase::refuse(Gesture gesture, const CellWrite& cell, const Error& error) const {
    if (gesture != Gesture::paste) {
        m_desk.refuse(error);
        return false;
    }
    m_desk.refuse({error.fault, "Nothing was pasted. Row " + std::to_string(cell.line)
            + " of what was copied, column " + utf8(title(cell.column)) + ": " + error.sentence});
    return false;
}

void TableModelBase::sayChanged(int firstRow, int lastRow) {
    if (firstRow <= lastRow && columnCount() > 0)
        Q_EMIT dataChanged(index(firstRow, 0), index(lastRow, columnCount() - 1));
}

} // namespace miterbook
