// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <vector>

class QFormLayout;
class QLabel;

namespace miterbook {

class TableModelBase;

/// The columns of one row of a table, one below the other: a form in which each field is one
/// gesture when it is left. A text that the book does not take stays, with the sentence below it.
class RecordForm : public QWidget {
    Q_OBJECT
public:
    /// Shows the first row of the model, which must outlive the form.
    explicit RecordForm(TableModelBase& model, QWidget* parent = nullptr);

private:
    struct Field {
        QWidget* editor = nullptr;
        QLabel* below = nullptr; ///< what was refused
    };

    void build();
    QWidget* makeEditor(int column);
    void commit(int column);
    void show(int column);
    void showAll();
    QString typed(int column) const;

    TableModelBase& m_model;
    QFormLayout* m_layout;
    std::vector<Field> m_fields;
    int m_committing = -1;
};

} // namespace miterbook
