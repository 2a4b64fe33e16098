// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/backcharges.h"

#include "bill/bill_checks.h"
#include "desk/desk.h"
#include "stages/bill/bill_desk.h"
#include "widgets/columns.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QLabel>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<Backcharge> backchargeColumns[] = {
    dateColumn<&Backcharge::date>(QT_TRANSLATE_NOOP("Column", "Date")),
    textColumn<&Backcharge::reason>(QT_TRANSLATE_NOOP("Column", "What for")),
    moneyColumn<&Backcharge::amount>(QT_TRANSLATE_NOOP("Column", "Amount")).sum(),
    wordColumn<&Backcharge::state>(QT_TRANSLATE_NOOP("Column", "The shop says")),
};

TableModelBase* backchargeModel(BillDesk& bill, QObject* parent) {
    TableSpec<Backcharge> spec;
    spec.name = QObject::tr("Backcharges");
    spec.columns = backchargeColumns;
    spec.rows = [&bill] {
        std::vector<Backcharge> rows;
        for (const auto& [id, each] : bill.book().jobs.of<Backcharge>()) {
            if (bill.house() && each.house == bill.house()->id)
                rows.push_back(each);
        }
        return rows;
    };
    spec.blank = [&bill](int) {
        Backcharge blank;
        blank.house = bill.house() ? bill.house()->id : Id<House>();
        blank.date = bill.today();
        return blank;
    };
    spec.check = checkBackcharge;
    spec.title = [](const Backcharge& each) { return "the backcharge " + each.reason; };
    spec.emptyHint = QObject::tr("Type what the builder wants to take off and why. Accepted ones "
                                 "come off the next draw.");
    auto* model = new TableModel<Backcharge>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

} // namespace

QWidget* backchargesTab(BillDesk& bill) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->addWidget(hintLabel(QObject::tr(
        "Claimed: the builder wants it. Accepted: it comes off the next draw. Refused: the shop "
        "does not agree, and says why in the reason.")));
    layout->addWidget(new TablePanel(*backchargeModel(bill, page)), 1);
    return page;
}

} // namespace miterbook
