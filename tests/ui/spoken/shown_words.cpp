// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken/shown_words.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTabWidget>

namespace miterbook {

namespace {

constexpr int rowsLookedAt = 60;

void addCells(const QAbstractItemModel& model, QStringList& words) {
    for (int column = 0; column < model.columnCount(); ++column) {
        for (const auto role : {Qt::DisplayRole, Qt::AccessibleTextRole, Qt::ToolTipRole})
            words << model.headerData(column, Qt::Horizontal, role).toString();
        for (int row = 0; row < std::min(model.rowCount(), rowsLookedAt); ++row) {
            const QModelIndex cell = model.index(row, column);
            words << cell.data(Qt::DisplayRole).toString() << cell.data(Qt::ToolTipRole).toString();
        }
    }
}

void addOwn(const QWidget& widget, QStringList& words) {
    words << widget.accessibleName() << widget.accessibleDescription() << widget.toolTip();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words << button->text();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        words << line->text() << line->placeholderText();
    if (const auto* page = qobject_cast<const QPlainTextEdit*>(&widget))
        words << page->toPlainText();
    if (const auto* group = qobject_cast<const QGroupBox*>(&widget))
        words << group->title();
    if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
        for (int i = 0; i < box->count(); ++i)
            words << box->itemText(i);
    }
    if (const auto* tabs = qobject_cast<const QTabWidget*>(&widget)) {
        for (int i = 0; i < tabs->count(); ++i)
            words << tabs->tabText(i) << tabs->tabToolTip(i);
    }
    const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
    if (view && view->model() && !qobject_cast<const QHeaderView*>(view))
        addCells(*view->model(), words);
    for (const QAction* action : widget.actions())
        words << action->text() << action->toolTip();
}

} // namespace

QStringList shownWords(QWidget& root) {
    QStringList words;
    addOwn(root, words);
    for (const QWidget* widget : root.findChildren<QWidget*>()) {
        if (widget->isVisible())
            addOwn(*widget, words);
    }
    words.removeDuplicates();
    words.removeAll(QString());
    return words;
}

} // namespace miterbook
