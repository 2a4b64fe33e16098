// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/invoice.h"
#include "bill/payment.h"
#include "papers/paper.h"

#include <QWidget>

#include <optional>

namespace miterbook {

class BillDesk;
class DataTable;
class TableModelBase;

/// The house's invoices and credit notes, and the payments of its builder.
class InvoicesTab final : public QWidget {
    Q_OBJECT
public:
    explicit InvoicesTab(BillDesk& bill, QWidget* parent = nullptr);

    DataTable& bills() const { return *m_bills; }
    DataTable& payments() const { return *m_payments; }
    /// The invoice of the cursor as it was issued. Errors: none, or its text has been damaged.
    Result<Paper> currentPaper() const;

public Q_SLOTS:
    void printOne();
    void voidOne();
    void creditOne();
    void printStatement();
    void recordPayment();
    void spreadPayment();
    void removePayment();

private:
    QWidget* billPart();
    QWidget* paymentPart();
    std::optional<Bill> currentBill() const;
    const Payment* currentPayment() const;

    BillDesk& m_bill;
    TableModelBase* m_billModel;
    TableModelBase* m_paymentModel;
    DataTable* m_bills = nullptr;
    DataTable* m_payments = nullptr;
};

} // namespace miterbook
