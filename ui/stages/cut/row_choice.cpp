// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/row_choice.h"

#include "figures/figure_view.h"

#include <QAbstractProxyModel>
#include <QHeaderView>
#include <QTableView>

#include <algorithm>

namespace miterbook {

namespace {

constexpr double armsLength = 1.3; ///< of the desktop's own type

int sourceRow(const QTableView& table, const QModelIndex& index) {
    const auto* proxy = qobject_cast<const QAbstractProxyModel*>(table.model());
    return proxy && index.isValid() ? proxy->mapToSource(index).row() : -1;
}

} // namespace

std::vector<std::size_t> chosenRows(const FigureView& view) {
    const QTableView& table = *const_cast<FigureView&>(view).table();
    std::vector<std::size_t> rows;
    QModelIndexList selected = table.selectionModel()->selectedRows();
    std::ranges::sort(selected, {}, [](const QModelIndex& index) { return index.row(); });
    for (const QModelIndex& index : selected)
        rows.push_back(static_cast<std::size_t>(sourceRow(table, index)));
    if (rows.empty() && table.currentIndex().isValid())
        rows.push_back(static_cast<std::size_t>(sourceRow(table, table.currentIndex())));
    return rows;
}

int cursorRow(const FigureView& view) {
    const QTableView& table = *const_cast<FigureView&>(view).table();
    return sourceRow(table, table.currentIndex());
}

void setLargeType(FigureView& view) {
    QTableView* table = view.table();
    QFont font = table->font();
    font.setPointSizeF(font.pointSizeF() * armsLength);
    table->setFont(font);
    table->horizontalHeader()->setFont(font);
    table->verticalHeader()->setDefaultSectionSize(QFontMetrics(font).height() * 8 / 5);
}

} // namespace miterbook
