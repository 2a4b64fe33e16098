// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/invoices_tab.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "papers/bill_papers.h"
#include "papers/issue.h"
#include "printing/preview.h"
#include "stages/bill/bill_desk.h"
#include "stages/bill/draw_dialog.h"
#include "stages/bill/invoice_rows.h"
#include "widgets/data_table.h"
#include "widgets/field_dialog.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

TableModelBase* billModel(BillDesk& bill, QObject* parent) {
    TableSpec<BillRow> spec;
    spec.name = InvoicesTab::tr("Invoices");
    spec.columns = billColumns();
    spec.rows = [&bill] { return billRows(bill); };
    spec.key = [](const BillRow& row) { return row.bill.invoice.id.value(); };
    spec.fixedRows = true;
    spec.emptyHint = InvoicesTab::tr("Nothing has been issued for this house. A draw is issued "
                                     "under Contract and draw.");
    auto* model = new TableModel<BillRow>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

TableModelBase* paymentModel(BillDesk& bill, QObject* parent) {
    TableSpec<PaymentRow> spec;
    spec.name = InvoicesTab::tr("Payments");
    spec.columns = paymentColumns();
    spec.rows = [&bill] { return paymentRows(bill); };
    spec.key = [](const PaymentRow& row) { return row.payment.id.value(); };
    spec.fixedRows = true;
    spec.emptyHint = InvoicesTab::tr("Nothing has come in from this builder yet.");
    auto* model = new TableModel<PaymentRow>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

} // namespace

InvoicesTab::InvoicesTab(BillDesk& bill, QWidget* parent)
    : QWidget(parent)
    , m_bill(bill)
    , m_billModel(billModel(bill, this))
    , m_paymentModel(paymentModel(bill, this)) {
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(billPart());
    split->addWidget(paymentPart());
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split);
}

/// A panel over a row of buttons.
static QWidget* withButtons(TablePanel* panel, const QList<QPushButton*>& buttons) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(panel, 1);
    auto* row = new QHBoxLayout;
    for (QPushButton* button : buttons) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    row->addStretch(1);
    layout->addLayout(row);
    return page;
}

QWidget* InvoicesTab::billPart() {
    auto* panel = new TablePanel(*m_billModel);
    m_bills = &panel->table();
    auto* print = new QPushButton(tr("&Print\u2026"));
    auto* credit = new QPushButton(tr("&Credit note\u2026"));
    auto* take = new QPushButton(tr("&Void\u2026"));
    auto* statement = new QPushButton(tr("&Statement of the builder\u2026"));
    connect(print, &QPushButton::clicked, this, &InvoicesTab::printOne);
    connect(credit, &QPushButton::clicked, this, &InvoicesTab::creditOne);
    connect(take, &QPushButton::clicked, this, &InvoicesTab::voidOne);
    connect(statement, &QPushButton::clicked, this, &InvoicesTab::printStatement);
    return withButtons(panel, {print, credit, take, statement});
}

QWidget* InvoicesTab::paymentPart() {
    auto* panel = new TablePanel(*m_paymentModel);
    m_payments = &panel->table();
    auto* record = new QPushButton(tr("&Record a payment\u2026"));
    auto* spread = new QPushButton(tr("Spread what is &left"));
    auto* remove = new QPushButton(tr("Re&move the payment"));
    connect(record, &QPushButton::clicked, this, &InvoicesTab::recordPayment);
    connect(spread, &QPushButton::clicked, this, &InvoicesTab::spreadPayment);
    connect(remove, &QPushButton::clicked, this, &InvoicesTab::removePayment);
    return withButtons(panel, {record, spread, remove});
}

std::optional<Bill> InvoicesTab::currentBill() const {
    const int row = m_bills->currentRow();
    return row < 0 ? std::nullopt
                   : findBill(m_bill.book(), Id<Invoice>(m_billModel->keyOfRow(row)));
}

const Payment* InvoicesTab::currentPayment() const {
    const int row = m_payments->currentRow();
    if (row < 0)
        return nullptr;
    return m_bill.book().jobs.of<Payment>().find(Id<Payment>(m_paymentModel->keyOfRow(row)));
}

Result<Paper> InvoicesTab::currentPaper() const {
    const auto bill = currentBill();
    if (!bill || !m_bill.house())
        return badInput("Choose an invoice in the list first.");
    return invoiceAsIssued(m_bill.book(), bill->invoice);
}

void InvoicesTab::printOne() {
    const auto paper = currentPaper();
    if (paper)
        previewPaper(window(), *paper, m_bill.book().prices.shop().page);
    else
        m_bill.desk().refuse(paper.error());
}

void InvoicesTab::voidOne() {
    if (const auto bill = currentBill())
        voidDialog(m_bill, *bill, this);
}

void InvoicesTab::creditOne() {
    if (const auto bill = currentBill())
        issueCreditDialog(m_bill, *bill, this);
}

void InvoicesTab::printStatement() {
    FieldDialog dialog(tr("Statement"), tr("Show it"), this);
    auto* from = dialog.addDate(tr("&From"), addDays(m_bill.today(), -90));
    auto* to = dialog.addDate(tr("&To"), m_bill.today());
    Result<Paper> paper = Paper();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto first = FieldDialog::dateIn(*from, m_bill.book());
        const auto last = FieldDialog::dateIn(*to, m_bill.book());
        if (!first || !last)
            return first ? last.error() : first.error();
        if (*last < *first)
            return badInput("The statement ends before it begins.");
        paper = statementPaper(m_bill.book(), m_bill.builder(), *first, *last);
        return {};
    });
    if (said)
        previewPaper(window(), *paper, m_bill.book().prices.shop().page);
}

void InvoicesTab::recordPayment() {
    FieldDialog dialog(tr("Record a payment"), tr("Record it"), this);
    auto* date = dialog.addDate(tr("&Date"), m_bill.today());
    auto* amount = dialog.addMoney(tr("&Amount"));
    auto* reference = dialog.addText(tr("&Reference, such as the number of the check"));
    dialog.addHint(tr("It pays the builder's oldest open invoices first; a rest stays with the "
                      "builder."));
    Result<Edit> edit = Edit();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto day = FieldDialog::dateIn(*date, m_bill.book());
        const auto money = FieldDialog::moneyIn(*amount);
        if (!day || !money)
            return day ? money.error() : day.error();
        edit = miterbook::recordPayment(m_bill.book(), m_bill.desk().ids(),
            {{}, m_bill.builder(), *day, *money, utf8(reference->text().trimmed())});
        return edit ? Result<void>() : Result<void>(edit.error());
    });
    if (said)
        m_bill.perform(edit);
}

void InvoicesTab::spreadPayment() {
    if (const Payment* payment = currentPayment())
        m_bill.perform(spreadRest(m_bill.book(), m_bill.desk().ids(), *payment));
}

void InvoicesTab::removePayment() {
    if (const Payment* payment = currentPayment())
        m_bill.perform(miterbook::removePayment(m_bill.book(), payment->id));
}

} // namespace miterbook
