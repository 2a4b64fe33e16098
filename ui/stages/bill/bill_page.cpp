// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/bill_page.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "stages/bill/backcharges.h"
#include "stages/bill/bill_desk.h"
#include "stages/bill/draw_rows.h"
#include "stages/bill/draw_tab.h"
#include "stages/bill/extras_tab.h"
#include "stages/bill/invoice_rows.h"
#include "stages/bill/invoices_tab.h"
#include "widgets/empty_page.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QStackedLayout>
#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

BillPage::BillPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_bill(new BillDesk(desk, figures, this))
    , m_stack(new QStackedLayout(this))
    , m_account(plainLabel({}))
    , m_open(plainLabel({}))
    , m_tabs(new QTabWidget)
    , m_extras(new ExtrasTab(*m_bill))
    , m_draw(new DrawTab(*m_bill))
    , m_invoices(new InvoicesTab(*m_bill)) {
    m_account->setAccessibleDescription(tr("Account of the house"));
    m_open->setAccessibleDescription(tr("What is open"));
    QFont bold = m_open->font();
    bold.setBold(true);
    m_open->setFont(bold);
    m_tabs->addTab(m_extras, tr("Extras"));
    m_tabs->addTab(m_draw, tr("Contract and draw"));
    m_tabs->addTab(m_invoices, tr("Invoices and payments"));
    m_tabs->addTab(backchargesTab(*m_bill), tr("Backcharges"));
    auto* work = new QWidget;
    auto* layout = new QVBoxLayout(work);
    layout->addWidget(m_account);
    layout->addWidget(m_open);
    layout->addWidget(m_tabs, 1);
    m_stack->addWidget(work);
    m_stack->addWidget(new EmptyPage(tr("A house is billed, not a plan"),
        tr("Start a house from this plan: it has its own contract, extras and invoices."),
        nullptr));
    connect(m_bill, &BillDesk::reckoned, this, &BillPage::refresh);
    refresh();
}

void BillPage::refresh() {
    m_stack->setCurrentIndex(m_bill->house() ? 0 : 1);
    const std::string& symbol = m_bill->book().prices.shop().currency;
    const auto money = [&](Money amount) { return text(formatMoney(amount, symbol)); };
    const HouseAccount account = m_bill->account();
    m_account->setText(!m_bill->contract()
            ? tr("No contract yet.")
            : tr("Contract %1 and extras %2 make %3: billed %4, retained %5, still to bill %6.")
                  .arg(money(account.contract), money(account.extras), money(account.value()),
                      money(account.billed), money(account.retained), money(account.unbilled)));
    Money open;
    Money late;
    for (const BillRow& row : billRows(*m_bill)) {
        open += row.open();
        late += row.daysLate > 0 && row.open() > Money() ? row.open() : Money();
    }
    QStringList said;
    if (open != Money())
        said << tr("Owed %1.").arg(money(open));
    if (late != Money())
        said << tr("LATE: %1 of it is past due.").arg(money(late));
    if (account.deposit != Money())
        said << tr("Deposit not used up: %1.").arg(money(account.deposit));
    m_open->setText(said.join(QLatin1Char(' ')));
    m_open->setVisible(!said.isEmpty());
}

QString BillPage::account() const {
    return m_account->text();
}

QString BillPage::nextStep() const {
    if (!m_bill->house())
        return tr("start a house from this plan");
    for (const Extra& extra : extrasOf(m_bill->book(), m_bill->house()->id)) {
        if (extra.state == ExtraState::priced)
            return tr("get a yes for the extra \"%1\"").arg(text(extra.title));
        if (extra.state == ExtraState::asked)
            return tr("price the extra \"%1\"").arg(text(extra.title));
    }
    if (!m_bill->contract())
        return tr("take the bid over as the contract once the builder has said yes");
    Money now;
    for (const DrawRow& row : drawRows(*m_bill))
        now += row.now();
    if (now > Money())
        return tr("issue a draw: %1 of work is done and not billed").arg(text(formatMoney(now)));
    if (m_bill->account().unbilled > Money())
        return tr("say how much of the work is done, then issue a draw");
    if (m_bill->account().retained > Money())
        return tr("ask for the retainage when it is due");
    return {};
}

} // namespace miterbook
