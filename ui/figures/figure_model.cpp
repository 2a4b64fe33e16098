// SPDX-License-Identifier: GPL-3.0-or-later
#include "figures/figure_model.h"

#include "widgets/column_text.h"

#include <QFont>

#include <algorithm>

namespace miterbook {

FigureModel::FigureModel(QStringList titles, QObject* parent)
    : QAbstractTableModel(parent)
    , m_titles(std::move(titles)) {
}

/// Adds or drops rows at the end so that there are `count`.
void FigureModel::fit(std::size_t count) {
    const int present = static_cast<int>(m_rows.size());
    const int wanted = static_cast<int>(count);
    if (wanted > present) {
        beginInsertRows({}, present, wanted - 1);
        m_rows.resize(count);
        endInsertRows();
    } else if (wanted < present) {
        beginRemoveRows({}, wanted, present - 1);
        m_rows.resize(count);
        endRemoveRows();
    }
}

std::vector<int> FigureModel::setRows(std::vector<FigureRow> rows) {
    std::vector<int> changed;
    fit(rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (m_rows[i] == rows[i])
            continue;
        m_rows[i] = std::move(rows[i]);
        const int row = static_cast<int>(i);
        changed.push_back(row);
        Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
    }
    return changed;
}

int FigureModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int FigureModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_titles.size());
}

QVariant FigureModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const FigureRow& row = m_rows[static_cast<std::size_t>(index.row())];
    const auto column = static_cast<std::size_t>(index.column());
    if (role == fromRole)
        return row.from;
    if (role == Qt::FontRole && row.strong) {
        QFont font;
        font.setBold(true);
        return font;
    }
    if (column >= row.cells.size())
        return {};
    const FigureCell& cell = row.cells[column];
    switch (role) {
    case Qt::DisplayRole:
        return cell.text;
    case sortRole:
        return cell.number ? QVariant(*cell.number) : QVariant(cell.text);
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            (cell.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::AccessibleTextRole:
        return QString(m_titles.at(index.column()) + QLatin1String(": ") + cell.text);
    default:
        return {};
    }
}

QVariant FigureModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical && role == Qt::AccessibleTextRole)
        return QString::number(section + 1); // the eye sees no numbers of rows
    if (orientation != Qt::Horizontal || section < 0 || section >= m_titles.size())
        return {};
    if (role == Qt::DisplayRole)
        return isNumeric(section) ? narrowTitle(m_titles.at(section)) : m_titles.at(section);
    if (role == Qt::AccessibleTextRole)
        return m_titles.at(section);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(
            (isNumeric(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return {};
}

bool FigureModel::isNumeric(int column) const {
    const auto at = static_cast<std::size_t>(column);
    return std::ranges::any_of(m_rows,
        [&](const FigureRow& row) { return at < row.cells.size() && row.cells[at].number; });
}

} // namespace miterbook
