// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/column_text.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"

#include <algorithm>
#include <numeric>

// The longer member functions of TableModel; included by table_model.h alone.

namespace miterbook {

template <class Row>
QVariant TableModel<Row>::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const int c = index.column();
    const RowMark mark = markOf(index.row());
    switch (role) {
    case Qt::DisplayRole:
        if (kind(c) == CellKind::check)
            return {};
        [[fallthrough]];
    case Qt::EditRole: {
        // The blank row says nothing until something is typed, whatever it would begin with.
        if (!isReal(index.row()))
            return {};
        const QString cell = column(c).textOf(shown(index.row()), book());
        return kind(c) == CellKind::lines && role == Qt::DisplayRole ? onOneLine(cell) : cell;
    }
    case Qt::CheckStateRole:
        if (kind(c) != CellKind::check || !isReal(index.row()) || !means(index.row(), c))
            return {};
        return number(index.row(), c) ? Qt::Checked : Qt::Unchecked;
    case Qt::TextAlignmentRole:
        return alignmentOf(kind(c));
    case Qt::FontRole:
        return fontOf(mark);
    case Qt::ForegroundRole:
        return inkOf(mark);
    case Qt::AccessibleTextRole:
        if (!isReal(index.row()))
            return spokenCell(title(c), {}, tr("new row"));
        return spokenCell(title(c), column(c).textOf(shown(index.row()), book()), wordOf(mark));
    case Qt::ToolTipRole:
    case whereFromRole: {
        const QString where = column(c).whereFrom && isReal(index.row())
            ? column(c).whereFrom(m_rows[at(index.row())], book())
            : QString();
        return role == whereFromRole ? where : safeTip(where);
    }
    case sortRole:
        if (column(c).number)
            return QVariant::fromValue<qlonglong>(number(index.row(), c));
        return column(c).textOf(shown(index.row()), book());
    default:
        return {};
    }
}

template <class Row>
Qt::ItemFlags TableModel<Row>::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags seen
        = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const int c = index.column();
    if (isComputed(c) || markOf(index.row()) == RowMark::removed || !means(index.row(), c))
        return seen;
    if (kind(c) == CellKind::check)
        return isReal(index.row()) ? seen | Qt::ItemIsUserCheckable : seen;
    return seen | Qt::ItemIsEditable;
}

template <class Row>
bool TableModel<Row>::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || (role != Qt::EditRole && role != Qt::CheckStateRole))
        return false;
    QString typed = value.toString();
    if (role == Qt::CheckStateRole)
        typed = value.toInt() == Qt::Checked ? QStringLiteral("yes") : QStringLiteral("no");
    return writeCells({{index.row(), index.column(), typed}}, Gesture::type);
}

template <class Row>
bool TableModel<Row>::writeCells(const std::vector<CellWrite>& cells, Gesture gesture) {
    std::map<int, Row> touched;
    const int real = static_cast<int>(m_rows.size());
    for (const CellWrite& cell : cells) {
        const auto& column = this->column(cell.column);
        const bool isNew = cell.row >= real;
        if (!column.edit || (isNew && (!m_spec.blank || cell.typed.trimmed().isEmpty()))
            || markOf(cell.row) == RowMark::removed)
            continue;
        Row fresh = cell.row < real ? m_rows[at(cell.row)] : m_spec.blank(cell.row - real);
        Row& row = touched.try_emplace(cell.row, std::move(fresh)).first->second;
        const bool same = !isNew && column.textOf(row, book()) == cell.typed;
        if (same || (column.applies && !column.applies(row)))
            continue;
        if (const auto put = column.edit(row, cell.typed, book()); !put)
            return refuse(gesture, cell, put.error());
    }
    std::vector<Row> kept;
    bool added = true;
    for (auto& [place, row] : touched) {
        if (place < real && row == m_rows[at(place)])
            continue;
        TableEdits<Row>::own(row);
        if (const auto checked = edits().check(row); !checked) {
            const auto cell = std::ranges::find(cells, place, &CellWrite::row);
            return refuse(gesture, *cell, checked.error());
        }
        added = added && place >= real;
        kept.push_back(row);
    }
    if (kept.empty())
        return true;
    EditBuilder edit(book(), edits().sentence(added ? "Add" : "Revise", kept));
    m_typing = true;
    for (Row& row : kept)
        edits().store(edit, std::move(row));
    const bool done = m_desk.perform(edit.take());
    m_typing = false;
    return done;
}

template <class Row>
bool TableModel<Row>::removeRowsAt(const std::vector<int>& rows) {
    std::vector<Row> gone;
    for (const int row : rows) {
        if (!m_spec.fixedRows && isReal(row) && markOf(row) != RowMark::removed)
            gone.push_back(m_rows[at(row)]);
    }
    if (gone.empty())
        return true;
    EditBuilder edit(book(), edits().sentence("Remove", gone));
    for (const Row& row : gone)
        edits().remove(edit, row);
    return m_desk.perform(edit.take());
}

template <class Row>
bool TableModel<Row>::duplicateRows(const std::vector<int>& rows) {
    std::vector<Row> copies;
    for (const int row : rows) {
        if (m_spec.fixedRows || !isReal(row) || !m_spec.blank)
            continue;
        Row copy = m_rows[at(row)];
        const Row fresh = m_spec.blank(static_cast<int>(copies.size()));
        if constexpr (requires { copy.id; })
            copy.id = fresh.id;
        if constexpr (requires { copy.position; })
            copy.position = fresh.position;
        if (m_spec.copied)
            m_spec.copied(copy, static_cast<int>(copies.size()));
        if (const auto checked = edits().check(copy); !checked) {
            m_desk.refuse(checked.error());
            return false;
        }
        copies.push_back(std::move(copy));
    }
    if (copies.empty())
        return true;
    EditBuilder edit(book(), edits().sentence("Copy", copies));
    for (Row& row : copies)
        edits().store(edit, std::move(row));
    m_typing = true;
    const bool done = m_desk.perform(edit.take());
    m_typing = false;
    return done;
}

template <class Row>
std::vector<std::int64_t> TableModel<Row>::keysOf(const std::vector<Row>& rows) const {
    std::vector<std::int64_t> keys;
    keys.reserve(rows.size());
    for (const Row& row : rows) {
        if (m_spec.key) {
            keys.push_back(m_spec.key(row));
        } else if constexpr (requires { row.id.value(); }) {
            keys.push_back(row.id.value());
        } else {
            keys.push_back(static_cast<std::int64_t>(keys.size()));
        }
    }
    return keys;
}

template <class Row>
void TableModel<Row>::refresh() {
    std::vector<Row> rows = m_spec.rows();
    std::vector<std::int64_t> keys = keysOf(rows);
    const RowSteps steps = rowSteps(m_keys, keys);
    if (m_spec.blank)
        m_blank = m_spec.blank(0);
    if (steps.reordered)
        reorder(std::move(rows), std::move(keys));
    else
        move(std::move(rows), std::move(keys), steps);
    // Names from other rows stand in these, so every row is said to have changed; a view paints
    // only those it shows.
    sayChanged(0, rowCount() - 1);
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, std::max(0, columnCount() - 1));
}

/// A row typed into the blank row takes its place; other new rows and the next blank row come after.
template <class Row>
void TableModel<Row>::takeBlankPlace(
    typename std::vector<Row>::const_iterator first, typename std::vector<Row>::const_iterator last) {
    const int place = static_cast<int>(m_rows.size());
    m_rows.push_back(*first);
    std::optional<Row> blank; // for a moment: as many rows as before, the blank one filled
    blank.swap(m_blank);
    sayChanged(place, place);
    beginInsertRows({}, place + 1, place + static_cast<int>(last - first));
    m_rows.insert(m_rows.end(), first + 1, last);
    m_blank.swap(blank);
    endInsertRows();
}

template <class Row>
void TableModel<Row>::move(
    std::vector<Row> rows, std::vector<std::int64_t> keys, const RowSteps& steps) {
    using Step = typename std::vector<Row>::difference_type;
    for (const RowRange& range : steps.removals) {
        beginRemoveRows({}, range.first, range.first + range.count - 1);
        const auto first = m_rows.begin() + Step(range.first);
        m_rows.erase(first, first + Step(range.count));
        endRemoveRows();
    }
    for (const RowRange& range : steps.insertions) {
        const auto first = rows.begin() + Step(range.first);
        const auto last = first + Step(range.count);
        const bool atEnd = at(range.first) == m_rows.size();
        if (m_typing && m_blank && atEnd) {
            takeBlankPlace(first, last);
            continue;
        }
        beginInsertRows({}, range.first, range.first + range.count - 1);
        m_rows.insert(m_rows.begin() + Step(range.first), first, last);
        endInsertRows();
    }
    m_rows = std::move(rows);
    m_keys = std::move(keys);
}

template <class Row>
void TableModel<Row>::reorder(std::vector<Row> rows, std::vector<std::int64_t> keys) {
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

} // namespace miterbook
