// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_block.h"
#include "widgets/cell_change.h"
#include "widgets/data_table.h"
#include "widgets/field_dialog.h"
#include "widgets/plain_text.h"
#include "widgets/table_proxy.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QToolTip>

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

/// Selected cells by row and column as they are seen.
struct Selected {
    std::set<int> rows;
    std::set<int> columns; ///< visual
};

Selected selectedOf(const DataTable& table) {
    Selected selected;
    const QItemSelectionModel& model = *table.selectionModel();
    for (const QModelIndex& index : model.selectedIndexes()) {
        if (table.isColumnHidden(index.column()))
            continue;
        selected.rows.insert(index.row());
        selected.columns.insert(table.horizontalHeader()->visualIndex(index.column()));
    }
    return selected;
}

} // namespace

QAction* DataTable::gesture(
    const QString& words, const QKeySequence& keys, void (DataTable::*slot)()) {
    auto* action = new QAction(words, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    m_gestures.append(action);
    return action;
}

void DataTable::makeGestures() {
    gesture(tr("Cu&t cells"), QKeySequence::Cut, &DataTable::cutCells);
    gesture(tr("&Copy cells"), QKeySequence::Copy, &DataTable::copyCells);
    gesture(tr("&Paste cells"), QKeySequence::Paste, &DataTable::pasteCells);
    gesture(tr("Cl&ear cells"), QKeySequence(Qt::Key_Delete), &DataTable::clearCells);
    gesture(tr("Fill &down"), QKeySequence(Qt::CTRL | Qt::Key_D), &DataTable::fillDown);
    gesture(tr("C&hange cells\u2026"), QKeySequence(Qt::CTRL | Qt::Key_E), &DataTable::changeCells);
    gesture(tr("&New row"), QKeySequence(Qt::CTRL | Qt::Key_Insert), &DataTable::goToBlankRow);
    gesture(
        tr("Copy &row"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D), &DataTable::duplicateRows);
    gesture(tr("Remo&ve rows"), QKeySequence(Qt::CTRL | Qt::Key_Delete), &DataTable::removeRows);
    gesture(tr("Where does this &number come from?"), QKeySequence(Qt::Key_F8),
        &DataTable::sayWhereFrom);
    connect(this, &QAbstractItemView::clicked, this, [this](const QModelIndex& index) {
        if (m_model.isComputed(index.column()))
            sayWhereFrom();
    });
    setContextMenuPolicy(Qt::ActionsContextMenu);
}

void DataTable::copyCells() {
    const Selected selected = selectedOf(*this);
    CellBlock block;
    for (const int row : selected.rows) {
        QStringList cells;
        for (const int visual : selected.columns) {
            const QModelIndex index = m_proxy->index(row, horizontalHeader()->logicalIndex(visual));
            cells.append(index.data(Qt::EditRole).toString());
        }
        block.append(cells);
    }
    if (!block.isEmpty())
        QGuiApplication::clipboard()->setText(writeCellBlock(block));
}

void DataTable::cutCells() {
    copyCells();
    clearCells();
}

std::vector<int> DataTable::shownColumnsFrom(int visual) const {
    std::vector<int> columns;
    for (; visual < horizontalHeader()->count(); ++visual) {
        const int column = horizontalHeader()->logicalIndex(visual);
        if (!isColumnHidden(column))
            columns.push_back(column);
    }
    return columns;
}

std::vector<CellWrite> DataTable::pastedCells(const CellBlock& block) const {
    const Selected selected = selectedOf(*this);
    const int top = selected.rows.empty() ? currentIndex().row() : *selected.rows.begin();
    const int left = selected.columns.empty()
        ? horizontalHeader()->visualIndex(currentIndex().column())
        : *selected.columns.begin();
    const std::vector<int> columns = shownColumnsFrom(left);
    std::vector<CellWrite> cells;
    int beyond = m_model.blankRow(); // rows past the last are new ones, one after the other
    for (int line = 0; line < block.size(); ++line) {
        const QModelIndex shown = m_proxy->index(top + line, 0);
        const bool isNew = !shown.isValid() || isBlankRow(shown);
        if (isNew && m_model.blankRow() < 0)
            break;
        const int row = isNew ? beyond++ : m_proxy->mapToSource(shown).row();
        const QStringList& texts = block[line];
        for (int i = 0; i < texts.size() && i < static_cast<int>(columns.size()); ++i)
            cells.push_back({row, columns[static_cast<std::size_t>(i)], texts[i], line + 1});
    }
    return cells;
}

void DataTable::pasteCells() {
    const CellBlock block = readCellBlock(QGuiApplication::clipboard()->text());
    if (block.isEmpty() || !currentIndex().isValid())
        return;
    const QModelIndexList selected = selectionModel()->selectedIndexes();
    const bool one = block.size() == 1 && block.first().size() == 1;
    if (!one || selected.size() < 2) {
        m_model.writeCells(pastedCells(block), TableModelBase::Gesture::paste);
        return;
    }
    std::vector<CellWrite> cells; // one cell over many fills them all
    for (const QModelIndex& index : selected) {
        const QModelIndex source = m_proxy->mapToSource(index);
        if (!isBlankRow(index))
            cells.push_back({source.row(), source.column(), block.first().first(), 1});
    }
    m_model.writeCells(cells, TableModelBase::Gesture::paste);
}

void DataTable::clearCells() {
    const QModelIndexList whole = selectionModel()->selectedRows();
    if (!whole.isEmpty() && selectionBehavior() != SelectRows) {
        removeRows();
        return;
    }
    std::vector<CellWrite> cells;
    for (const QModelIndex& index : selectionModel()->selectedIndexes()) {
        const QModelIndex source = m_proxy->mapToSource(index);
        if (!isBlankRow(index) && !isColumnHidden(index.column()))
            cells.push_back({source.row(), source.column(), QString(), 0});
    }
    m_model.writeCells(cells, TableModelBase::Gesture::clear);
}

void DataTable::fillDown() {
    const Selected selected = selectedOf(*this);
    if (selected.rows.empty())
        return;
    const bool one = selected.rows.size() == 1;
    const int from = one ? *selected.rows.begin() - 1 : *selected.rows.begin();
    if (from < 0)
        return;
    std::vector<CellWrite> cells;
    for (const int visual : selected.columns) {
        const int column = horizontalHeader()->logicalIndex(visual);
        const QString typed = m_proxy->index(from, column).data(Qt::EditRole).toString();
        for (const int row : selected.rows) {
            const QModelIndex index = m_proxy->index(row, column);
            if (row != from && !isBlankRow(index))
                cells.push_back({m_proxy->mapToSource(index).row(), column, typed, 0});
        }
    }
    m_model.writeCells(cells, TableModelBase::Gesture::fill);
}

Result<void> DataTable::changeSelected(const QString& typed) {
    const CellChange change = readCellChange(typed);
    std::vector<CellWrite> cells;
    for (const QModelIndex& index : selectionModel()->selectedIndexes()) {
        const QModelIndex source = m_proxy->mapToSource(index);
        const int column = source.column();
        if (isBlankRow(index) || isColumnHidden(index.column()) || m_model.isComputed(column))
            continue;
        if (!change.by) {
            cells.push_back({source.row(), column, change.put, 0});
            continue;
        }
        const CellKind kind = m_model.kind(column);
        if (!isNumber(kind) || kind == CellKind::length)
            return badInput(utf8(m_model.title(column))
                + " cannot be changed by a percentage: only money and other numbers can.");
        const std::int64_t number = changedBy(m_model.number(source.row(), column), *change.by);
        cells.push_back({source.row(), column, m_model.written(number, source.row(), column), 0});
    }
    if (cells.empty())
        return badInput("No cell that can be typed into is selected.");
    std::string refused;
    QObject listener;
    connect(&m_model.desk(), &Desk::refused, &listener,
        [&](const QString& sentence) { refused = utf8(sentence); });
    return m_model.writeCells(cells, TableModelBase::Gesture::fill) ? Result<void>()
                                                                    : badInput(refused);
}

void DataTable::changeCells() {
    FieldDialog dialog(tr("Change the selected cells"), tr("&Change"), window());
    const QLineEdit* typed = dialog.addText(tr("&What they become"));
    dialog.addHint(tr("+3 % makes each number 3 % larger, -3 % smaller. Anything else is put into "
                      "every selected cell."));
    dialog.run([&] { return changeSelected(typed->text()); });
}

void DataTable::duplicateRows() {
    m_model.duplicateRows(selectedRows());
}

void DataTable::removeRows() {
    m_model.removeRowsAt(selectedRows());
}

void DataTable::goToBlankRow() {
    if (m_model.blankRow() < 0)
        return;
    const QModelIndex first = m_proxy->mapFromSource(m_model.index(m_model.blankRow(), 0));
    const bool typed = first.flags() & Qt::ItemIsEditable;
    moveTo(typed ? first : nextEditable(first, 1));
}

void DataTable::sayWhereFrom() {
    const QString where = currentIndex().data(TableModelBase::whereFromRole).toString();
    if (where.isEmpty())
        return;
    const QRect cell = visualRect(currentIndex());
    QToolTip::showText(
        viewport()->mapToGlobal(cell.bottomLeft()), safeTip(where), viewport(), cell, 60'000);
}

} // namespace miterbook
