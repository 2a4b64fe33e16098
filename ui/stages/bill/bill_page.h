// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QStackedLayout;
class QTabWidget;

namespace miterbook {

class BillDesk;
class Desk;
class DrawTab;
class ExtrasTab;
class FigureDesk;
class InvoicesTab;

/// A house's money: extras, contract and draws, invoices and payments, backcharges. Its account is
/// always in view.
class BillPage final : public QWidget {
    Q_OBJECT
public:
    BillPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    BillDesk& bill() const { return *m_bill; }
    ExtrasTab& extras() const { return *m_extras; }
    DrawTab& draw() const { return *m_draw; }
    InvoicesTab& invoices() const { return *m_invoices; }
    QTabWidget& tabs() const { return *m_tabs; }
    QString account() const;
    QString nextStep() const;

private:
    void refresh();

    BillDesk* m_bill;
    QStackedLayout* m_stack;
    QLabel* m_account;
    QLabel* m_open;
    QTabWidget* m_tabs;
    ExtrasTab* m_extras;
    DrawTab* m_draw;
    InvoicesTab* m_invoices;
};

} // namespace miterbook
