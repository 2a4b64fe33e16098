// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace miterbook {

class DataTable;
class TableModelBase;

/// A table with a line to find rows above and its totals below: what every table of the book and of
/// the stages stands in.
class TablePanel : public QWidget {
    Q_OBJECT
public:
    explicit TablePanel(TableModelBase& model, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    /// Puts a control beside the find line.
    void addBeside(QWidget* control);

private:
    void showTotals();

    TableModelBase& m_model;
    DataTable* m_table;
    QHBoxLayout* m_top;
    QLineEdit* m_find;
    QLabel* m_totals;
};

} // namespace miterbook
