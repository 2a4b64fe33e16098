// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_delegate.h"

#include "widgets/table_model_base.h"

#include <QAbstractItemView>
#include <QAbstractProxyModel>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>

namespace miterbook {

namespace {

struct Cell {
    const TableModelBase* model = nullptr;
    QModelIndex index;
};

Cell cellOf(const QModelIndex& index) {
    if (const auto* proxy = qobject_cast<const QAbstractProxyModel*>(index.model()))
        return cellOf(proxy->mapToSource(index));
    return {qobject_cast<const TableModelBase*>(index.model()), index};
}

/// The longest choice may be wider than its column.
void widenPopup(QComboBox& box) {
    int widest = 0;
    for (int i = 0; i < box.count(); ++i)
        widest = std::max(widest, box.fontMetrics().horizontalAdvance(box.itemText(i)));
    box.view()->setMinimumWidth(widest + 4 * box.fontMetrics().averageCharWidth());
}

QWidget* choiceEditor(QWidget* parent, const QStringList& choices) {
    auto* box = new QComboBox(parent);
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->addItems(choices);
    box->completer()->setCompletionMode(QCompleter::PopupCompletion);
    box->completer()->setFilterMode(Qt::MatchStartsWith);
    box->completer()->setCaseSensitivity(Qt::CaseInsensitive);
    box->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    box->setFrame(false);
    widenPopup(*box);
    return box;
}

} // namespace

QWidget* CellDelegate::createEditor(
    QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
    const Cell cell = cellOf(index);
    QWidget* editor = nullptr;
    if (cell.model && cell.model->kind(cell.index.column()) == CellKind::choice) {
        editor = choiceEditor(parent, cell.model->choices(cell.index));
    } else {
        auto* line = new QLineEdit(parent);
        line->setFrame(false);
        editor = line;
    }
    if (cell.model)
        editor->setAccessibleName(cell.model->titleWithUnit(cell.index.column()));
    return editor;
}

void CellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const QString cell = index.data(Qt::EditRole).toString();
    if (auto* box = qobject_cast<QComboBox*>(editor)) {
        box->setCurrentIndex(box->findText(cell));
        box->setEditText(cell);
        box->lineEdit()->selectAll();
    } else if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        line->setText(cell);
        line->selectAll();
    }
}

void CellDelegate::setModelData(
    QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    QString typed;
    if (const auto* box = qobject_cast<QComboBox*>(editor))
        typed = box->currentText();
    else if (const auto* line = qobject_cast<QLineEdit*>(editor))
        typed = line->text();
    Q_EMIT wrote(editor, model->setData(index, typed, Qt::EditRole));
}

void CellDelegate::updateEditorGeometry(
    QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex&) const {
    editor->setGeometry(option.rect);
}

void CellDelegate::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    option->textElideMode = Qt::ElideRight;
}

} // namespace miterbook
