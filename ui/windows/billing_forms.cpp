// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/billing_forms.h"

#include "bill/bill_checks.h"
#include "desk/desk.h"
#include "papers/ledger_csv.h"
#include "printing/export_paper.h"
#include "widgets/columns.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/scrolled.h"
#include "widgets/table_model.h"

#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<BillingSetup> billingColumns[] = {
    textColumn<&BillingSetup::prefix>(QT_TRANSLATE_NOOP("Column", "Before the number")),
    wholeColumn<&BillingSetup::firstNumber, 1, 100'000'000>(
        QT_TRANSLATE_NOOP("Column", "First number")),
    wordColumn<&BillingSetup::ageFrom>(QT_TRANSLATE_NOOP("Column", "Age counts from")),
    wholeColumn<&BillingSetup::lateDays, 0, 3660>(
        QT_TRANSLATE_NOOP("Column", "Late notice after, days")),
    linesColumn<&BillingSetup::lateNote>(QT_TRANSLATE_NOOP("Column", "Words below a late notice")),
    wholeColumn<&BillingSetup::remindDays, 0, 3660>(
        QT_TRANSLATE_NOOP("Column", "Remind ahead, days")),
    textColumn<&BillingSetup::receivable>(QT_TRANSLATE_NOOP("Column", "Account: owed by builders")),
    textColumn<&BillingSetup::retainage>(QT_TRANSLATE_NOOP("Column", "Account: retainage")),
    textColumn<&BillingSetup::income>(QT_TRANSLATE_NOOP("Column", "Account: income")),
    textColumn<&BillingSetup::tax>(QT_TRANSLATE_NOOP("Column", "Account: sales tax")),
    textColumn<&BillingSetup::deposits>(QT_TRANSLATE_NOOP("Column", "Account: deposits")),
    textColumn<&BillingSetup::backcharges>(QT_TRANSLATE_NOOP("Column", "Account: backcharges")),
    textColumn<&BillingSetup::bank>(QT_TRANSLATE_NOOP("Column", "Account: money that came in")),
};

TableModelBase* billingModel(Desk& desk, QObject* parent) {
    TableSpec<BillingSetup> spec;
    spec.name = QObject::tr("Numbers and ledger");
    spec.columns = billingColumns;
    spec.rows = [&desk] { return std::vector<BillingSetup>{desk.book().billing()}; };
    spec.check = checkBillingSetup;
    spec.store = [](EditBuilder& edit, BillingSetup setup) {
        setup.id = Id<BillingSetup>(1);
        edit.put(std::move(setup));
    };
    spec.title = [](const BillingSetup&) { return std::string("how bills are numbered"); };
    return new TableModel<BillingSetup>(desk, std::move(spec), parent);
}

void saveJournal(Desk& desk, QWidget* page) {
    QString path = QFileDialog::getSaveFileName(page->window(), QObject::tr("Save journal lines"),
        QDir::home().filePath(QStringLiteral("journal.csv")), QObject::tr("CSV (*.csv)"));
    if (path.isEmpty())
        return;
    const std::string csv = ledgerCsv(
        desk.book(), std::chrono::year(1900) / 1 / 1, desk.clock().today());
    if (auto written = writeWholeFile(path, QByteArray::fromStdString(csv)); !written)
        desk.refuse(written.error());
}

} // namespace

QWidget* billingSetupForm(Desk& desk) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* form = new RecordForm(*billingModel(desk, page));
    form->setAccessibleName(QObject::tr("Numbers and ledger"));
    auto* save = new QPushButton(QObject::tr("Save &journal lines as CSV\u2026"));
    QObject::connect(save, &QPushButton::clicked, page, [&desk, page] { saveJournal(desk, page); });
    layout->addWidget(scrolled(form), 1);
    layout->addWidget(
        hintLabel(QObject::tr("Every invoice, credit note, void and payment as double "
                              "entries, for any ledger. The first number counts while "
                              "nothing has been issued.")));
    layout->addWidget(save, 0, Qt::AlignLeft);
    return page;
}

} // namespace miterbook
