// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "widgets/column.h"
#include "widgets/table_spec.h"

#include <QAbstractTableModel>

#include <vector>

namespace miterbook {

/// A text for one cell. A row at or beyond the blank row is a new one.
struct CellWrite {
    int row = 0;
    int column = 0;
    QString typed;
    int line = 0; ///< line of the pasted block, from 1; 0 where nothing was pasted
};

/// The side of TableModel<Row> that views see: cells and gestures, whatever the rows are.
class TableModelBase : public QAbstractTableModel {
    Q_OBJECT
public:
    static constexpr int sortRole = Qt::UserRole;
    static constexpr int whereFromRole = Qt::UserRole + 1;

    enum class Gesture { type, paste, clear, fill };

    explicit TableModelBase(Desk& desk, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const { return m_desk.book(); }

    virtual QString name() const = 0;
    virtual QString emptyHint() const = 0;
    virtual CellKind kind(int column) const = 0;
    virtual bool isComputed(int column) const = 0;
    virtual bool isSummed(int column) const = 0;
    virtual bool hasWhereFrom(int column) const = 0;
    virtual QString title(int column) const = 0;
    virtual QStringList choices(const QModelIndex& index) const = 0;
    /// The exact value behind a cell, and how such a value is written.
    virtual std::int64_t number(int row, int column) const = 0;
    virtual QString written(std::int64_t number, int column) const = 0;

    /// The row that waits for a new one to be typed; -1 where none can be typed.
    virtual int blankRow() const = 0;
    virtual RowMark markOf(int row) const = 0;
    /// The place of the row of a key; -1 when it is not shown.
    virtual int rowOfKey(std::int64_t key) const = 0;
    virtual std::int64_t keyOfRow(int row) const = 0;

    /// Writes cells as one gesture: all or nothing. Cells that are computed or say the same already
    /// are passed over. False when refused; the desk has said why.
    virtual bool writeCells(const std::vector<CellWrite>& cells, Gesture gesture) = 0;
    /// Removes rows as one gesture; the blank row is passed over.
    virtual bool removeRowsAt(const std::vector<int>& rows) = 0;
    /// Adds copies of rows as one gesture.
    virtual bool duplicateRows(const std::vector<int>& rows) = 0;

    int realRows() const;
    /// The title with the unit beside it: "Width, in".
    QString titleWithUnit(int column) const;

public Q_SLOTS:
    /// Reads the rows again and shows what has changed. Follows Desk::changed by itself; for rows
    /// that are made of figures, connect FigureDesk::figured to it.
    virtual void refresh() = 0;

protected:
    bool refuse(Gesture gesture, const CellWrite& cell, const Error& error) const;
    /// Says a change of texts in rows that stay: of all rows, or of some.
    void sayChanged(int firstRow, int lastRow);

    Desk& m_desk;
};

} // namespace miterbook
