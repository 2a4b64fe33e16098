// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/extra_price.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace miterbook {

class BillDesk;
class DataTable;
class TableModelBase;

/// Extras of the house: a line to enter one in a few keystrokes, and the list of them with their
/// steps from asked to billed.
class ExtrasTab final : public QWidget {
    Q_OBJECT
public:
    explicit ExtrasTab(BillDesk& bill, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    QString priceLine() const;

public Q_SLOTS:
    /// Adds what the entry line says.
    void add();
    void approve();
    void markDone();
    void drop();
    void addPhoto();
    void showPhotos();
    void printOne();

private:
    void buildEntry();
    QWidget* buttons();
    Result<std::vector<ExtraLine>> typedLines() const;
    Result<Extra> typedExtra() const;
    const Extra* current() const;
    void sayPrice();
    void sayCurrent();
    void perform(const QString& verb, const Result<Extra>& extra);

    BillDesk& m_bill;
    TableModelBase* m_model;
    DataTable* m_table = nullptr;
    QLineEdit* m_title;
    QLineEdit* m_who;
    QComboBox* m_task;
    QLineEdit* m_quantity;
    QLineEdit* m_material;
    QLineEdit* m_price;
    QLabel* m_says;
    QLabel* m_standing;
};

} // namespace miterbook
