// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"

#include <QWidget>

class QLabel;
class QStackedLayout;

namespace miterbook {

class BillDesk;
class DataTable;
class TableModelBase;

/// What was agreed, how much of it is done, and the draw that this makes; and the terms.
class DrawTab final : public QWidget {
    Q_OBJECT
public:
    explicit DrawTab(BillDesk& bill, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }

public Q_SLOTS:
    /// Takes the bid's prices over as the contract.
    void agree();
    void issueDraw();
    void askDeposit();
    void releaseRetainage();
    void keepTermsOfBuilder();

private:
    using MakeBill = Result<Bill> (*)(const Billing&, Date, Money);

    void issueAmount(const QString& title, Money amount, const QString& hint, MakeBill make);
    QWidget* work();
    QWidget* terms();
    void refresh();

    BillDesk& m_bill;
    QStackedLayout* m_stack;
    TableModelBase* m_model;
    DataTable* m_table = nullptr;
    QLabel* m_lines;
};

} // namespace miterbook
