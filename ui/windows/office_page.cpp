// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/office_page.h"

#include "papers/bill_papers.h"
#include "printing/preview.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/billing_forms.h"
#include "windows/dates_tab.h"
#include "windows/money_columns.h"
#include "windows/reminders_tab.h"

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

namespace {

TableModelBase* agingModel(MoneyDesk& money, QObject* parent) {
    TableSpec<AgingRow> spec;
    spec.name = OfficePage::tr("Who owes");
    spec.columns = agingColumns();
    spec.rows = [&money] { return money.aging(); };
    spec.key = [](const AgingRow& row) { return row.line.builder.value(); };
    spec.fixedRows = true;
    spec.emptyHint = OfficePage::tr(
        "Nobody owes anything: invoices are issued in each house, under "
        "Bill.");
    return new TableModel<AgingRow>(money.desk(), std::move(spec), parent);
}

TableModelBase* toBillModel(MoneyDesk& money, QObject* parent) {
    TableSpec<ToBillRow> spec;
    spec.name = OfficePage::tr("To bill");
    spec.columns = toBillColumns();
    spec.rows = [&money] { return money.houses(); };
    spec.key = [](const ToBillRow& row) { return row.house.value(); };
    spec.fixedRows = true;
    spec.emptyHint = OfficePage::tr("No house has a contract yet.");
    return new TableModel<ToBillRow>(money.desk(), std::move(spec), parent);
}

} // namespace

OfficePage::OfficePage(Desk& desk, MoneyDesk& money, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_money(money)
    , m_tabs(new QTabWidget) {
    setAccessibleName(tr("Office"));
    m_tabs->addTab(agingTab(), tr("Who owes"));
    m_tabs->addTab(housesTab(), tr("To bill"));
    m_tabs->addTab(new RemindersTab(desk), tr("Reminders"));
    m_tabs->addTab(new DatesTab(desk), tr("Dates"));
    m_tabs->addTab(billingSetupForm(desk), tr("Numbers and ledger"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tabs);
    setFocusProxy(m_tabs);
}

QWidget* OfficePage::agingTab() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* panel = new TablePanel(*agingModel(m_money, page));
    m_aging = &panel->table();
    auto* statement = new QPushButton(tr("&Statement\u2026"));
    connect(statement, &QPushButton::clicked, this, &OfficePage::showStatement);
    panel->addBeside(statement);
    layout->addWidget(panel, 1);
    layout->addWidget(hintLabel(tr("Retainage that is held is not owed yet and stands under To "
                                   "bill.")));
    return page;
}

QWidget* OfficePage::housesTab() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* panel = new TablePanel(*toBillModel(m_money, page));
    m_houses = &panel->table();
    m_houses->setOpensRows(true);
    connect(m_houses, &QAbstractItemView::activated, this, &OfficePage::openHouse);
    layout->addWidget(panel, 1);
    layout->addWidget(
        hintLabel(tr("To bill: what is done by the contract's terms, with extras that "
                     "are done, less what was billed. Enter opens the house.")));
    return page;
}

void OfficePage::showStatement() {
    constexpr int days = 90;
    const int row = m_aging->currentRow();
    if (row < 0) {
        m_desk.refuse(badInput("Choose a builder in the list first."));
        return;
    }
    const Date today = m_desk.clock().today();
    const Id<Builder> builder(m_aging->cells().keyOfRow(row));
    previewPaper(window(), statementPaper(m_desk.book(), builder, addDays(today, -days), today),
        m_desk.book().prices.shop().page);
}

void OfficePage::openHouse() {
    const int row = m_houses->currentRow();
    const House* house = row < 0 ? nullptr
                                 : m_desk.book().house(Id<House>(m_houses->cells().keyOfRow(row)));
    if (house)
        Q_EMIT opened({house->work, house->id, {}});
}

} // namespace miterbook
