// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_proxy.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The C locale compares bytes only; numbers in marks sort as numbers in any other.
QLocale sortingLocale() {
    const QLocale locale;
    return locale.language() == QLocale::C ? QLocale(QLocale::English) : locale;
}

} // namespace

TableProxy::TableProxy(TableModelBase& model, QObject* parent)
    : QSortFilterProxyModel(parent)
    , m_model(model)
    , m_collator(sortingLocale()) {
    m_collator.setNumericMode(true); // W2 before W10
    m_collator.setCaseSensitivity(Qt::CaseInsensitive);
    setDynamicSortFilter(false);
    setSourceModel(&model);
}

void TableProxy::setFind(const QString& words) {
    m_words = words.split(QChar(u' '), Qt::SkipEmptyParts);
    invalidateFilter();
}

void TableProxy::setRowFilter(std::function<bool(int)> passes) {
    m_passes = std::move(passes);
    invalidateFilter();
}

bool TableProxy::filterAcceptsRow(int row, const QModelIndex&) const {
    if (row == m_model.blankRow())
        return true;
    if (m_passes && !m_passes(row))
        return false;
    return std::ranges::all_of(m_words, [&](const QString& word) { return rowHas(row, word); });
}

bool TableProxy::rowHas(int row, const QString& word) const {
    for (int column = 0; column < m_model.columnCount(); ++column) {
        const QString cell = m_model.index(row, column).data(Qt::EditRole).toString();
        if (cell.contains(word, Qt::CaseInsensitive))
            return true;
    }
    return false;
}

bool TableProxy::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    const int blank = m_model.blankRow();
    if (left.row() == blank || right.row() == blank)
        return (right.row() == blank) == (sortOrder() == Qt::AscendingOrder);
    const QVariant a = left.data(TableModelBase::sortRole);
    const QVariant b = right.data(TableModelBase::sortRole);
    if (a.typeId() == QMetaType::LongLong && b.typeId() == QMetaType::LongLong)
        return a.toLongLong() < b.toLongLong();
    return m_collator.compare(a.toString(), b.toString()) < 0;
}

} // namespace miterbook
