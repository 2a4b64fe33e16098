// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "widgets/row_steps.h"
#include "widgets/table_rows.h"

#include <QAbstractTableModel>

#include <map>
#include <memory>
#include <vector>

namespace miterbook {

/// A text for one cell. A row at or beyond the blank row is a new one.
struct CellWrite {
    int row = 0;
    int column = 0;
    QString typed;
    int line = 0; ///< line of the pasted block or of the file, from 1; 0 where there is none
};

/// TableModel<Row> whatever the rows are: cells and gestures, as views and delegates see them.
class TableModelBase : public QAbstractTableModel {
    Q_OBJECT
public:
    static constexpr int sortRole = Qt::UserRole;
    static constexpr int whereFromRole = Qt::UserRole + 1;

    enum class Gesture { type, paste, bring, clear, fill };

    TableModelBase(Desk& desk, std::unique_ptr<TableRows> source, QObject* parent);

    Desk& desk() const { return m_desk; }
    const Book& book() const { return m_desk.book(); }

    QString name() const { return m_source->name(); }
    QString emptyHint() const { return m_source->emptyHint(); }
    CellKind kind(int c) const { return column(c).kind; }
    bool isComputed(int c) const { return !column(c).typed; }
    bool isSummed(int c) const { return column(c).summed; }
    int letters(int c) const { return column(c).letters; }
    bool hasWhereFrom(int c) const { return column(c).whereFrom; }
    QString title(int c) const;
    /// The title with the unit beside it: "Width, in".
    QString titleWithUnit(int c) const;
    QStringList choices(const QModelIndex& index) const;
    /// The exact value behind a cell, and how such a value is written.
    std::int64_t number(int row, int c) const { return m_source->number(shown(row), c); }
    QString written(std::int64_t number, int c) const;
    /// The same as a cell of the row says it.
    QString written(std::int64_t number, int row, int c) const {
        return m_source->written(number, shown(row), c, book());
    }

    int realRows() const { return static_cast<int>(m_rows.size()); }
    /// The row that waits for a new one to be typed; -1 where none can be typed.
    int blankRow() const { return m_blank ? realRows() : -1; }
    RowMark markOf(int row) const;
    /// The place of the row of a key; -1 when it is not shown.
    int rowOfKey(std::int64_t key) const;
    std::int64_t keyOfRow(int row) const { return isReal(row) ? m_keys[at(row)] : 0; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    /// Writes cells as one gesture: all or nothing. Cells that are computed or say the same already
    /// are passed over. False when refused; the desk has said why.
    bool writeCells(const std::vector<CellWrite>& cells, Gesture gesture);
    /// Removes rows as one gesture; the blank row is passed over.
    bool removeRowsAt(const std::vector<int>& rows);
    /// Adds copies of rows as one gesture.
    bool duplicateRows(const std::vector<int>& rows);

public Q_SLOTS:
    /// Reads the rows again and shows what has changed. Follows Desk::changed by itself; for rows
    /// that are made of figures, connect FigureDesk::figured to it.
    void refresh();

protected:
    /// The row at a place; nullptr for the blank row.
    const void* realRow(int row) const { return isReal(row) ? m_rows[at(row)].get() : nullptr; }

private:
    using Boxes = std::vector<RowBox>;
    using Keys = std::vector<std::int64_t>;

    static std::size_t at(int row) { return static_cast<std::size_t>(row); }
    bool isReal(int row) const { return row >= 0 && at(row) < m_rows.size(); }
    const ColumnFacts& column(int c) const { return m_columns[at(c)]; }
    const void* shown(int row) const { return isReal(row) ? m_rows[at(row)].get() : m_blank.get(); }
    bool means(int row, int c) const { return m_source->applies(shown(row), c); }
    QString textAt(int row, int c) const { return m_source->text(shown(row), c, book()); }
    QString whereFromAt(int row, int c) const;
    QString rowHeader(int row) const;
    Keys keysOf(const Boxes& rows) const;

    bool isLocked(const CellWrite& cell) const;
    /// The row that cells are typed into: a copy of the one shown, or a new one.
    RowBox draft(int row) const;
    bool type(void* draft, const CellWrite& cell, Gesture gesture) const;
    /// Draws up the edit that keeps rows: "Revise window W4", or "Revise 3 rows of Windows".
    Edit editOf(std::string_view verb, const std::vector<const void*>& rows,
        void (TableRows::*take)(EditBuilder&, const void*));
    /// Performs an edit of ours: new rows take the blank row's place.
    bool performTyped(const Edit& edit);
    bool refuse(Gesture gesture, const CellWrite& cell, const Error& error) const;

    void takeBlankPlace(Boxes& rows, const RowRange& range);
    void move(Boxes rows, Keys keys, const RowSteps& steps);
    void reorder(Boxes rows, Keys keys);
    /// Says a change of texts in rows that stay.
    void sayChanged(int firstRow, int lastRow);

    Desk& m_desk;
    std::unique_ptr<TableRows> m_source;
    std::vector<ColumnFacts> m_columns;
    Boxes m_rows;
    Keys m_keys;
    RowBox m_blank;
    bool m_typing = false; ///< an edit of ours is under way
};

} // namespace miterbook
