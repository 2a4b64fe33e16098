// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/draw_tab.h"

#include "bill/bill_checks.h"
#include "desk/desk.h"
#include "papers/issue.h"
#include "stages/bill/bill_desk.h"
#include "stages/bill/draw_dialog.h"
#include "stages/bill/draw_rows.h"
#include "widgets/data_table.h"
#include "widgets/field_dialog.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QAction>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace miterbook {

namespace {

/// Puts a line as typed into its contract, with what the edit has changed of it so far.
void storeDrawRow(const BillDesk& bill, EditBuilder& edit, const DrawRow& row) {
    const Contract* held = bill.contract() ? edit.find(bill.contract()->id) : nullptr;
    if (!held)
        return;
    Contract contract = *held;
    const auto value = std::ranges::find(contract.values, row.key.work, &ContractValue::work);
    if (value == contract.values.end() || !row.isWork())
        return;
    value->price = row.agreed;
    if (row.byWork)
        value->done = row.done;
    edit.put(std::move(contract));
}

TableModelBase* drawModel(BillDesk& bill, QObject* parent) {
    TableSpec<DrawRow> spec;
    spec.name = DrawTab::tr("Draw");
    spec.columns = drawColumns();
    spec.rows = [&bill] { return drawRows(bill); };
    spec.key = [](const DrawRow& row) {
        return row.key.extra ? row.key.extra.value() : -1 - static_cast<int>(row.key.work);
    };
    spec.check = [](const DrawRow& row) -> Result<void> {
        if (row.done < Percent() || row.done > Percent::hundred())
            return badInput(row.label + " is from 0 to 100 % done.");
        return {};
    };
    spec.store = [&bill](EditBuilder& edit, const DrawRow& row) { storeDrawRow(bill, edit, row); };
    spec.title = [](const DrawRow& row) { return row.label; };
    spec.fixedRows = true;
    auto* model = new TableModel<DrawRow>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

TableModelBase* termsModel(BillDesk& bill, QObject* parent) {
    TableSpec<Contract> spec;
    spec.name = DrawTab::tr("Terms");
    spec.columns = termColumns();
    spec.rows = [&bill] {
        return std::vector<Contract>{bill.contract() ? *bill.contract() : Contract()};
    };
    spec.check = checkContract;
    spec.store = [](EditBuilder& edit, Contract contract) {
        if (contract.id)
            edit.put(std::move(contract));
    };
    spec.title = [](const Contract&) { return std::string("the terms of the contract"); };
    auto* model = new TableModel<Contract>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

/// A stage with its place, since it has no id of its own.
struct StageRow {
    int place = -1;
    ContractStage stage;

    bool operator==(const StageRow&) const = default;
};

template <std::size_t Place>
const Column<ContractStage>& plainStageColumn() {
    return stageColumns()[Place];
}

template <std::size_t Place>
constexpr Column<StageRow> stageColumn(const char* title) {
    return {.title = title,
        .read = [](const StageRow& row,
                    const Book& book) { return plainStageColumn<Place>().textOf(row.stage, book); },
        .edit
        = [](StageRow& row, const QString& typed,
              const Book& book) { return plainStageColumn<Place>().edit(row.stage, typed, book); }};
}

constexpr Column<StageRow> stageRowColumns[] = {
    stageColumn<0>(QT_TRANSLATE_NOOP("Column", "Stage")),
    stageColumn<1>(QT_TRANSLATE_NOOP("Column", "Share, %")),
    stageColumn<2>(QT_TRANSLATE_NOOP("Column", "Reached on"))};

TableModelBase* stagesModel(BillDesk& bill, QObject* parent) {
    TableSpec<StageRow> spec;
    spec.name = DrawTab::tr("Stages");
    spec.columns = stageRowColumns;
    spec.rows = [&bill] {
        std::vector<StageRow> rows;
        if (const Contract* contract = bill.contract()) {
            for (const ContractStage& stage : contract->stages)
                rows.push_back({static_cast<int>(rows.size()), stage});
        }
        return rows;
    };
    spec.key = [](const StageRow& row) { return std::int64_t(row.place) + 1; };
    spec.blank = [](int) { return StageRow(); };
    const auto change = [&bill](EditBuilder& edit, const StageRow& row, bool keep) {
        const Contract* held = bill.contract() ? edit.find(bill.contract()->id) : nullptr;
        if (!held)
            return;
        Contract contract = *held;
        const auto place = static_cast<std::size_t>(row.place);
        if (row.place < 0 || place >= contract.stages.size())
            contract.stages.push_back(row.stage);
        else if (keep)
            contract.stages[place] = row.stage;
        else
            contract.stages.erase(contract.stages.begin() + row.place);
        edit.put(std::move(contract));
    };
    spec.store = [change](EditBuilder& edit, const StageRow& row) { change(edit, row, true); };
    spec.remove = [change](EditBuilder& edit, const StageRow& row) { change(edit, row, false); };
    spec.title = [](const StageRow& row) { return "stage " + row.stage.name; };
    spec.emptyHint = DrawTab::tr(
        "Stages at which a share of the contract falls due: first trip 60, "
        "second trip 30, punch 10.");
    auto* model = new TableModel<StageRow>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

QPushButton* pushButton(const QString& words, auto* page, auto slot) {
    auto* button = new QPushButton(words);
    button->setAutoDefault(false);
    QObject::connect(button, &QPushButton::clicked, page, slot);
    return button;
}

} // namespace

DrawTab::DrawTab(BillDesk& bill, QWidget* parent)
    : QWidget(parent)
    , m_bill(bill)
    , m_stack(new QStackedLayout(this))
    , m_model(drawModel(bill, this))
    , m_lines(plainLabel({})) {
    auto* none = new QWidget;
    auto* first = new QVBoxLayout(none);
    first->addStretch(1);
    first->addWidget(headLabel(tr("Nothing has been agreed on this house yet")));
    first->addWidget(plainLabel(tr("When the builder says yes, the bid's prices by piece of work "
                                   "become the contract. They can be typed over before the first "
                                   "draw.")));
    auto* agreed = new QPushButton(tr("The &bid was accepted"));
    connect(agreed, &QPushButton::clicked, this, &DrawTab::agree);
    first->addWidget(agreed, 0, Qt::AlignLeft);
    first->addStretch(2);
    auto* split = new QSplitter;
    split->addWidget(work());
    split->addWidget(terms());
    split->setStretchFactor(0, 1);
    m_stack->addWidget(none);
    m_stack->addWidget(split);
    connect(&bill, &BillDesk::reckoned, this, &DrawTab::refresh);
    refresh();
}

QWidget* DrawTab::work() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* panel = new TablePanel(*m_model);
    m_table = &panel->table();
    layout->addWidget(panel, 1);
    layout->addWidget(m_lines);
    m_lines->setAccessibleDescription(tr("What the draw comes to"));
    auto* row = new QHBoxLayout;
    row->addWidget(pushButton(tr("&Issue the draw\u2026"), this, &DrawTab::issueDraw));
    row->addWidget(pushButton(tr("Ask for a &deposit\u2026"), this, &DrawTab::askDeposit));
    row->addWidget(pushButton(tr("&Release retainage\u2026"), this, &DrawTab::releaseRetainage));
    row->addStretch(1);
    layout->addLayout(row);
    return page;
}

QWidget* DrawTab::terms() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->addWidget(headLabel(tr("Terms")));
    layout->addWidget(new RecordForm(*termsModel(m_bill, page)));
    layout->addWidget(headLabel(tr("Stages")));
    layout->addWidget(new TablePanel(*stagesModel(m_bill, page)), 1);
    layout->addWidget(
        pushButton(tr("&Keep as the builder's terms\u2026"), this, &DrawTab::keepTermsOfBuilder));
    layout->addWidget(hintLabel(tr("Whether sales tax is due, and on what, differs by state: ask "
                                   "your accountant.")));
    return page;
}

void DrawTab::refresh() {
    m_stack->setCurrentIndex(m_bill.contract() ? 1 : 0);
    Money now;
    for (const DrawRow& row : drawRows(m_bill))
        now += row.now();
    m_lines->setText(now == Money()
            ? tr("Nothing more is done than has been billed.")
            : tr("%1 of work is done and not billed yet.")
                  .arg(text(formatMoney(now, m_bill.book().prices.shop().currency))));
}

void DrawTab::agree() {
    if (!m_bill.house())
        return;
    Contract contract = contractFor(m_bill.book(), *m_bill.house(), m_bill.bidValues());
    contract.id = m_bill.desk().ids().next<Contract>();
    contract.date = m_bill.today();
    m_bill.perform(agreeContract(
        m_bill.book(), m_bill.desk().ids(), contract, m_bill.today(), m_bill.estimate()));
}

void DrawTab::issueDraw() {
    if (m_bill.contract())
        issueDrawDialog(m_bill, this);
}

/// Asks for a day and an amount, and issues what `make` makes of them once it agrees.
void DrawTab::issueAmount(const QString& title, Money amount, const QString& hint, MakeBill make) {
    if (!m_bill.contract())
        return;
    FieldDialog dialog(title, tr("Issue the invoice"), this);
    auto* date = dialog.addDate(tr("&Date"), m_bill.today());
    auto* asked = dialog.addMoney(tr("&Amount"), amount);
    if (!hint.isEmpty())
        dialog.addHint(hint);
    Result<Bill> bill = Bill();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto day = FieldDialog::dateIn(*date, m_bill.book());
        const auto money = FieldDialog::moneyIn(*asked);
        if (!day || !money)
            return day ? money.error() : day.error();
        bill = make(m_bill.billing(), *day, *money);
        return bill ? Result<void>() : Result<void>(bill.error());
    });
    if (said)
        m_bill.issue(bill);
}

void DrawTab::askDeposit() {
    issueAmount(tr("Deposit"), {},
        tr("Money ahead of the work; later draws use it up. Tax goes with the work."), makeDeposit);
}

void DrawTab::releaseRetainage() {
    issueAmount(tr("Release retainage"), m_bill.account().retained, {}, makeRelease);
}

void DrawTab::keepTermsOfBuilder() {
    const Contract* contract = m_bill.contract();
    if (!contract)
        return;
    FieldDialog dialog(tr("Keep the terms"), tr("Keep them"), this);
    dialog.addHint(tr("New contracts with this builder begin with these terms and stages."));
    auto* waiver = dialog.addCheck(tr("Remind me of a waiver with each payment"),
        termsFor(m_bill.book(), contract->builder).waiver);
    if (dialog.run([] { return Result<void>(); })) {
        m_bill.perform(
            keepTerms(m_bill.book(), m_bill.desk().ids(), *contract, waiver->isChecked()));
    }
}

} // namespace miterbook
