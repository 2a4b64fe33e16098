// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_model_base.h"

#include "basics/amount_text.h"
#include "desk/text.h"
#include "widgets/cell_look.h"
#include "widgets/column_text.h"
#include "widgets/plain_text.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

TableModelBase::TableModelBase(Desk& desk, std::unique_ptr<TableRows> source, QObject* parent)
    : QAbstractTableModel(parent)
    , m_desk(desk)
    , m_source(std::move(source))
    , m_rows(m_source->read())
    , m_keys(keysOf(m_rows))
    , m_blank(m_source->blank(0)) {
    for (int c = 0; c < m_source->columns(); ++c)
        m_columns.push_back(m_source->column(c));
    connect(&desk, &Desk::changed, this, [this] { refresh(); });
}

QString TableModelBase::title(int c) const {
    return QCoreApplication::translate("Column", column(c).title);
}

QString TableModelBase::titleWithUnit(int c) const {
    const Shop& shop = book().prices.shop();
    switch (kind(c)) {
    case CellKind::length:
        if (shop.unit == LengthUnit::feetInches)
            return title(c);
        return title(c) + (shop.unit == LengthUnit::inches ? u", in"_s : u", mm"_s);
    case CellKind::run:
        return title(c) + u", "_s + text(runUnit(shop.unit));
    case CellKind::runPrice:
        return title(c) + u", "_s + text(shop.currency) + u'/' + text(runUnit(shop.unit));
    case CellKind::floor:
        return title(c) + (shop.unit == LengthUnit::millimetres ? u", m²"_s : u", sq ft"_s);
    case CellKind::money:
        return title(c) + u", "_s + text(shop.currency);
    case CellKind::percent:
        return title(c) + u", %"_s;
    default:
        return title(c);
    }
}

QStringList TableModelBase::choices(const QModelIndex& index) const {
    return m_source->choices(shown(index.row()), index.column(), book());
}

QString TableModelBase::written(std::int64_t number, int c) const {
    const auto write = column(c).write;
    return write ? write(number, book()) : QString::number(number);
}

RowMark TableModelBase::markOf(int row) const {
    return isReal(row) ? m_source->mark(m_rows[at(row)].get()) : RowMark::plain;
}

int TableModelBase::rowOfKey(std::int64_t key) const {
    const auto it = std::ranges::find(m_keys, key);
    return it == m_keys.end() ? -1 : static_cast<int>(it - m_keys.begin());
}

int TableModelBase::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : realRows() + (m_blank ? 1 : 0);
}

int TableModelBase::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QString TableModelBase::rowHeader(int row) const {
    if (!isReal(row))
        return QString(QChar(u'*'));
    const QString words = m_source->head(m_rows[at(row)].get());
    const QString number = QString::number(row + 1);
    return words.isEmpty() ? number : number + u"  "_s + words;
}

QVariant TableModelBase::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical)
        return role == Qt::DisplayRole ? rowHeader(section) : QVariant();
    if (role == Qt::DisplayRole)
        return isNumber(kind(section)) ? narrowTitle(titleWithUnit(section))
                                       : titleWithUnit(section);
    if (role == Qt::AccessibleTextRole)
        return titleWithUnit(section);
    return role == Qt::TextAlignmentRole ? alignmentOf(kind(section)) : QVariant();
}

QString TableModelBase::whereFromAt(int row, int c) const {
    return isReal(row) ? m_source->whereFrom(m_rows[at(row)].get(), c, book()) : QString();
}

QVariant TableModelBase::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const int row = index.row();
    const int c = index.column();
    switch (role) {
    case Qt::DisplayRole:
        if (kind(c) == CellKind::check)
            return {};
        [[fallthrough]];
    case Qt::EditRole: {
        // The blank row says nothing until something is typed, whatever it would begin with.
        if (!isReal(row))
            return {};
        const QString cell = textAt(row, c);
        return kind(c) == CellKind::lines && role == Qt::DisplayRole ? onOneLine(cell) : cell;
    }
    case Qt::CheckStateRole:
        if (kind(c) != CellKind::check || !isReal(row) || !means(row, c))
            return {};
        return number(row, c) ? Qt::Checked : Qt::Unchecked;
    case Qt::TextAlignmentRole:
        return alignmentOf(kind(c));
    case Qt::FontRole:
        return fontOf(markOf(row));
    case Qt::ForegroundRole:
        return inkOf(markOf(row));
    case Qt::AccessibleTextRole:
        if (!isReal(row))
            return spokenCell(title(c), {}, tr("new row"));
        return spokenCell(title(c), textAt(row, c), wordOf(markOf(row)));
    case Qt::ToolTipRole:
        return safeTip(whereFromAt(row, c));
    case whereFromRole:
        return whereFromAt(row, c);
    case sortRole:
        if (column(c).numbered)
            return QVariant::fromValue<qlonglong>(number(row, c));
        return textAt(row, c);
    default:
        return {};
    }
}

Qt::ItemFlags TableModelBase::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags seen = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const int c = index.column();
    if (isComputed(c) || markOf(index.row()) == RowMark::removed || !means(index.row(), c))
        return seen;
    if (kind(c) == CellKind::check)
        return isReal(index.row()) ? seen | Qt::ItemIsUserCheckable : seen;
    return seen | Qt::ItemIsEditable;
}

bool TableModelBase::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || (role != Qt::EditRole && role != Qt::CheckStateRole))
        return false;
    QString typed = value.toString();
    if (role == Qt::CheckStateRole)
        typed = value.toInt() == Qt::Checked ? u"yes"_s : u"no"_s;
    return writeCells({{index.row(), index.column(), typed}}, Gesture::type);
}

} // namespace miterbook
