// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/table_model_base.h"

#include <QList>
#include <QPointer>
#include <QTableView>

#include <vector>

class QAction;

namespace miterbook {

class TableProxy;

/// A table that is worked in as in a spreadsheet: type to edit, Enter and Tab to move, copy and
/// paste of blocks, fill down, rows copied and removed, each one gesture that undo takes back.
class DataTable : public QTableView {
    Q_OBJECT
public:
    explicit DataTable(TableModelBase& model, QWidget* parent = nullptr);

    TableModelBase& cells() const { return m_model; }
    TableProxy& proxy() const { return *m_proxy; }

    /// Enter and double click emit activated() instead of moving on: for lists that open something.
    void setOpensRows(bool opens);
    /// The rows of the model that are selected, from top to bottom, without the blank row.
    std::vector<int> selectedRows() const;
    /// The current row of the model; -1 for none or the blank row.
    int currentRow() const;
    /// Makes the row of a key current and shows it. False when it is not in the table.
    bool showKey(std::int64_t key);
    /// Changes the selected cells as one gesture: "+3 %" makes each number so much larger, anything
    /// else is put into all. Errors: a sentence, and nothing has changed.
    Result<void> changeSelected(const QString& typed);
    /// What can be done with cells and rows, in menu order; a separator where an entry is null.
    const QList<QAction*>& gestures() const { return m_gestures; }

public Q_SLOTS:
    void copyCells();
    void cutCells();
    void pasteCells();
    void clearCells();
    void fillDown();
    /// Asks what is to become of the selected cells, and does it.
    void changeCells();
    void duplicateRows();
    void removeRows();
    void goToBlankRow();
    /// Says where a computed cell came from, beside it.
    void sayWhereFrom();

Q_SIGNALS:
    /// The row (of the model) that the cursor is in has changed; -1 for none or the blank row.
    void currentRowChanged(int row);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

protected Q_SLOTS:
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void makeGestures();
    QAction* gesture(const QString& words, const QKeySequence& keys, void (DataTable::*slot)());
    QModelIndex nextEditable(const QModelIndex& from, int step) const;
    void moveTo(const QModelIndex& index);
    void moveDown(int rows);
    std::vector<CellWrite> pastedCells(const QList<QStringList>& block) const;
    bool isBlankRow(const QModelIndex& index) const;
    std::vector<int> shownColumnsFrom(int visual) const;
    void keepWidths() const;
    bool restoreWidths();
    void fitWidths();

    TableModelBase& m_model;
    const QString m_widthsKey; ///< kept here: the model may go before the table does
    TableProxy* m_proxy;
    QList<QAction*> m_gestures;
    QPointer<QWidget> m_refused; ///< an editor with a text that the book did not take
    bool m_opensRows = false;
    bool m_fitted = false; ///< widths are the user's, or have been fitted to rows
};

} // namespace miterbook
