// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_model_base.h"

#include <algorithm>
#include <iterator>

// How a table follows the book: rows that stay keep their place in the views.

namespace miterbook {

TableModelBase::Keys TableModelBase::keysOf(const Boxes& rows) const {
    Keys keys;
    keys.reserve(rows.size());
    for (const RowBox& row : rows)
        keys.push_back(m_source->key(row.get(), keys.size()));
    return keys;
}

void TableModelBase::refresh() {
    Boxes rows = m_source->read();
    Keys keys = keysOf(rows);
    const RowSteps steps = rowSteps(m_keys, keys);
    if (m_blank)
        m_blank = m_source->blank(0);
    if (steps.reordered)
        reorder(std::move(rows), std::move(keys));
    else
        move(std::move(rows), std::move(keys), steps);
    // Names from other rows stand in these, so every row is said to have changed; a view paints
    // only those it shows.
    sayChanged(0, rowCount() - 1);
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, std::max(0, columnCount() - 1));
    if (m_source->hasHead() && rowCount() > 0)
        Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
}

/// A row typed into the blank row takes its place; other new rows and the next blank row come
/// after.
void TableModelBase::takeBlankPlace(Boxes& rows, const RowRange& range) {
    const auto first = std::make_move_iterator(rows.begin() + range.first);
    const int place = realRows();
    m_rows.push_back(*first);
    RowBox blank(
        nullptr, m_blank.get_deleter()); // for a moment: as many rows as before, all filled
    blank.swap(m_blank);
    sayChanged(place, place);
    beginInsertRows({}, place + 1, place + range.count);
    m_rows.insert(m_rows.end(), first + 1, first + range.count);
    m_blank.swap(blank);
    endInsertRows();
}

void TableModelBase::move(Boxes rows, Keys keys, const RowSteps& steps) {
    for (const RowRange& range : steps.removals) {
        beginRemoveRows({}, range.first, range.first + range.count - 1);
        const auto first = m_rows.begin() + range.first;
        m_rows.erase(first, first + range.count);
        endRemoveRows();
    }
    Boxes aside; // while rows are put in, those that stay are still shown as they were
    for (const RowRange& range : steps.insertions) {
        for (int i = 0; i < range.count; ++i)
            aside.push_back(m_source->copy(rows[at(range.first + i)].get()));
        const RowRange fresh{static_cast<int>(aside.size()) - range.count, range.count};
        if (m_typing && m_blank && range.first == realRows()) {
            takeBlankPlace(aside, fresh);
            continue;
        }
        beginInsertRows({}, range.first, range.first + range.count - 1);
        const auto first = std::make_move_iterator(aside.begin() + fresh.first);
        m_rows.insert(m_rows.begin() + range.first, first, first + range.count);
        endInsertRows();
    }
    m_rows = std::move(rows);
    m_keys = std::move(keys);
}

void TableModelBase::reorder(Boxes rows, Keys keys) {
    Q_EMIT layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    std::map<std::int64_t, int> places;
    for (int i = 0; at(i) < keys.size(); ++i)
        places[keys[at(i)]] = i;
    QModelIndexList after;
    for (const QModelIndex& index : before) {
        if (!isReal(index.row())) {
            after.append(createIndex(static_cast<int>(rows.size()), index.column()));
            continue;
        }
        const auto it = places.find(m_keys[at(index.row())]);
        after.append(it == places.end() ? QModelIndex() : createIndex(it->second, index.column()));
    }
    m_rows = std::move(rows);
    m_keys = std::move(keys);
    changePersistentIndexList(before, after);
    Q_EMIT layoutChanged();
}

void TableModelBase::sayChanged(int firstRow, int lastRow) {
    if (firstRow <= lastRow && columnCount() > 0)
        Q_EMIT dataChanged(index(firstRow, 0), index(lastRow, columnCount() - 1));
}

} // namespace miterbook
