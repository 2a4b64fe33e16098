// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/office_page.h"

#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/aging_tab.h"
#include "windows/billing_forms.h"
#include "windows/dates_tab.h"
#include "windows/money_columns.h"
#include "windows/reminders_tab.h"

#include <QLabel>
#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

namespace {

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
    , m_tabs(new QTabWidget)
    , m_aging(new AgingTab(money)) {
    setAccessibleName(tr("Office"));
    m_tabs->addTab(m_aging, tr("Who owes"));
    m_tabs->addTab(housesTab(), tr("To bill"));
    m_tabs->addTab(new RemindersTab(desk), tr("Reminders"));
    m_tabs->addTab(new DatesTab(desk), tr("Dates"));
    m_tabs->addTab(billingSetupForm(desk), tr("Numbers and ledger"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tabs);
    setFocusProxy(m_tabs);
}

DataTable& OfficePage::aging() const {
    return m_aging->table();
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

void OfficePage::openHouse() {
    const int row = m_houses->currentRow();
    const House* house = row < 0 ? nullptr
                                 : m_desk.book().house(Id<House>(m_houses->cells().keyOfRow(row)));
    if (house)
        Q_EMIT opened({house->work, house->id, {}});
}

} // namespace miterbook
