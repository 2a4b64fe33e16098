// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTableView;

namespace miterbook {

/// A table of computed figures with a filter line above it and, below it, where the current row
/// comes from. Ctrl+C copies the selection for a spreadsheet.
class FigureView : public QWidget {
    Q_OBJECT
public:
    /// `name` is read by screen readers and keeps the column widths.
    FigureView(const QString& name, const QStringList& titles, QWidget* parent = nullptr);

    /// Gives the rows most of the room: no filter, and words below only where there are any. For
    /// what a row of another view is made of.
    void standBelow();
    /// What the line below says while there are no rows: what brings the first one.
    void sayWhenEmpty(const QString& words);
    void setRows(std::vector<FigureRow> rows);
    /// The row of the cursor as its place among the rows set; -1 for none.
    int currentRow() const;
    FigureModel* model() { return m_model; }
    QTableView* table() const { return m_table; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildTable(const QString& name);
    void fitTitles();
    void widenColumns();
    void widenFor(const std::vector<int>& rows);
    void showFrom();
    void copySelection() const;

    FigureModel* m_model;
    QSortFilterProxyModel* m_proxy;
    QLineEdit* m_filter;
    QTableView* m_table;
    QLabel* m_from;
    QString m_whenEmpty;
    bool m_invites = true;         ///< to choose a row, to see where its numbers come from
    bool m_fitted = false;         ///< columns have been fitted to the first rows shown
    bool m_widening = false;       ///< we are at it
    bool m_widenWhenShown = false; ///< rows came while nobody saw them
    bool m_ownWidths = false;      ///< the user has dragged a column: leave them
};

} // namespace miterbook
