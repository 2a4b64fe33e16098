// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/aging_tab.h"

#include "charts/bar_picture.h"
#include "papers/bill_papers.h"
#include "printing/preview.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/money_columns.h"

#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

TableModelBase* agingModel(MoneyDesk& money, QObject* parent) {
    TableSpec<AgingRow> spec;
    spec.name = AgingTab::tr("Who owes");
    spec.columns = agingColumns();
    spec.rows = [&money] { return money.aging(); };
    spec.key = [](const AgingRow& row) { return row.line.builder.value(); };
    spec.fixedRows = true;
    spec.emptyHint = AgingTab::tr("Nobody owes anything: invoices are issued in each house, under "
                                  "Bill.");
    return new TableModel<AgingRow>(money.desk(), std::move(spec), parent);
}

PictureBar barOf(const QString& name, Money money, const QString& sign) {
    return {name, static_cast<double>(money.cents()) / 100, sign + text(formatMoney(money))};
}

} // namespace

AgingTab::AgingTab(MoneyDesk& money, QWidget* parent)
    : QWidget(parent)
    , m_money(money)
    , m_picture(new BarPicture(tr("Picture of what is owed"))) {
    auto* panel = new TablePanel(*agingModel(m_money, this));
    m_table = &panel->table();
    auto* statement = new QPushButton(tr("&Statement\u2026"));
    connect(statement, &QPushButton::clicked, this, &AgingTab::showStatement);
    panel->addBeside(statement);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(panel);
    split->addWidget(m_picture);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({fontMetrics().height() * 20, fontMetrics().height() * 20});
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split, 1);
    layout->addWidget(hintLabel(tr("Retainage that is held is not owed yet and stands under To "
                                   "bill.")));
    m_picture->printFor([this] {
        return PaperJob{m_money.desk().book(), {}, {}, {}, m_money.desk().clock().today()};
    });
    auto* seen = new SeenRefresh(this, [this] { draw(); });
    connect(&m_money.desk(), &Desk::changed, seen, [seen] { seen->want(); });
}

void AgingTab::draw() {
    std::vector<AgingLine> lines;
    for (const AgingRow& row : m_money.aging())
        lines.push_back(row.line);
    const AgingLine total = agingTotal(lines);
    m_picture->setVisible(!lines.empty());
    const QString sign = text(m_money.desk().book().prices.shop().currency);
    const QStringList ages{
        tr("0 to 30 days"), tr("31 to 60 days"), tr("61 to 90 days"), tr("over 90 days")};
    std::vector<PictureBar> bars;
    for (std::size_t i = 0; i < agingBuckets; ++i)
        bars.push_back(barOf(ages[qsizetype(i)], total.buckets.at(i), sign));
    if (total.credit != Money())
        bars.push_back(barOf(tr("left of payments"), -total.credit, sign));
    m_picture->setBars(tr("What builders owe, by age"), tr("owed, %1").arg(sign), tr("owed"),
        tr("left of payments"), bars);
}

void AgingTab::showStatement() {
    constexpr int days = 90;
    Desk& desk = m_money.desk();
    const int row = m_table->currentRow();
    if (row < 0) {
        desk.refuse(badInput("Choose a builder in the list first."));
        return;
    }
    const Date today = desk.clock().today();
    const Id<Builder> builder(m_table->cells().keyOfRow(row));
    previewPaper(window(), statementPaper(desk.book(), builder, addDays(today, -days), today),
        desk.book().prices.shop().page);
}

} // namespace miterbook
