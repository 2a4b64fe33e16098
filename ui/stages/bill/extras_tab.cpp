// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/extras_tab.h"

#include "basics/blank.h"
#include "bill/bill_checks.h"
#include "bill/extra_price.h"
#include "desk/desk.h"
#include "papers/bill_papers.h"
#include "printing/preview.h"
#include "stages/bill/bill_desk.h"
#include "stages/bill/photos.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/field_dialog.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

namespace {

/// "NOT APPROVED" is said in words, never by colour alone.
QString standingText(const Extra& extra, const Book&) {
    const QString state = text(word(extra.state));
    return lacksApproval(extra) ? ExtrasTab::tr("%1, NOT APPROVED").arg(state) : state;
}

constexpr Column<Extra> extraColumns[] = {
    textColumn<&Extra::title>(QT_TRANSLATE_NOOP("Column", "What")),
    textColumn<&Extra::askedBy>(QT_TRANSLATE_NOOP("Column", "Asked by")),
    dateColumn<&Extra::asked>(QT_TRANSLATE_NOOP("Column", "Asked on")),
    Column<Extra>{.title = QT_TRANSLATE_NOOP("Column", "Stands at"), .read = standingText},
    moneyColumn<&Extra::price>(QT_TRANSLATE_NOOP("Column", "Price")).sum(),
    moneyColumn<&Extra::material>(QT_TRANSLATE_NOOP("Column", "Material")).sum(),
    textColumn<&Extra::approvedBy>(QT_TRANSLATE_NOOP("Column", "Approved by")).computed(),
    dateColumn<&Extra::approved>(QT_TRANSLATE_NOOP("Column", "Approved on")).computed(),
    dateColumn<&Extra::done>(QT_TRANSLATE_NOOP("Column", "Done on")).computed(),
    textColumn<&Extra::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

/// A price typed into the list prices what was only asked for.
void storeExtra(EditBuilder& edit, Extra extra) {
    if (extra.state == ExtraState::asked && extra.price != Money())
        extra.state = ExtraState::priced;
    edit.put(std::move(extra));
}

TableModelBase* extraModel(BillDesk& bill, QObject* parent) {
    TableSpec<Extra> spec;
    spec.name = ExtrasTab::tr("Extras");
    spec.columns = extraColumns;
    spec.rows = [&bill] {
        return bill.house() ? extrasOf(bill.book(), bill.house()->id) : std::vector<Extra>();
    };
    spec.check = checkExtra;
    spec.store = storeExtra;
    spec.title = [](const Extra& extra) { return "the extra " + extra.title; };
    spec.fixedRows = true;
    spec.emptyHint = ExtrasTab::tr("Work beyond the contract goes in above: what, who asked, how "
                                   "much of which task. Enter adds it with its price.");
    auto* model = new TableModel<Extra>(bill.desk(), std::move(spec), parent);
    QObject::connect(&bill, &BillDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

} // namespace

ExtrasTab::ExtrasTab(BillDesk& bill, QWidget* parent)
    : QWidget(parent)
    , m_bill(bill)
    , m_model(extraModel(bill, this))
    , m_title(new QLineEdit)
    , m_who(new QLineEdit)
    , m_task(new QComboBox)
    , m_quantity(new QLineEdit)
    , m_material(new QLineEdit)
    , m_price(new QLineEdit)
    , m_says(hintLabel({}))
    , m_standing(plainLabel({})) {
    auto* panel = new TablePanel(*m_model);
    m_table = &panel->table();
    auto* layout = new QVBoxLayout(this);
    buildEntry();
    layout->addWidget(panel, 1);
    layout->addWidget(m_standing);
    layout->addWidget(buttons());
    m_standing->setAccessibleDescription(tr("How the extra stands"));
    connect(m_table, &DataTable::currentRowChanged, this, &ExtrasTab::sayCurrent);
    connect(&bill, &BillDesk::reckoned, this, &ExtrasTab::sayCurrent);
    sayPrice();
    sayCurrent();
}

void ExtrasTab::buildEntry() {
    auto* grid = new QGridLayout;
    const auto add = [&](int column, const QString& name, QWidget* field) {
        auto* label = new QLabel(name);
        label->setBuddy(field);
        field->setAccessibleName(QString(name).remove(QLatin1Char('&')));
        grid->addWidget(label, 0, column);
        grid->addWidget(field, 1, column);
    };
    m_task->addItem(tr("by price alone"));
    for (const auto& task : Words<Task>::list)
        m_task->addItem(text(said(task.value, m_bill.book().prices.shop().unit)));
    add(0, tr("&New extra"), m_title);
    add(1, tr("Asked b&y"), m_who);
    add(2, tr("&Task"), m_task);
    add(3, tr("How &much"), m_quantity);
    add(4, tr("Materia&l"), m_material);
    add(5, tr("&Price"), m_price);
    auto* enter = new QPushButton(tr("&Add"));
    enter->setAutoDefault(false);
    grid->addWidget(enter, 1, 6);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 1);
    static_cast<QVBoxLayout*>(layout())->addLayout(grid);
    static_cast<QVBoxLayout*>(layout())->addWidget(m_says);
    connect(enter, &QPushButton::clicked, this, &ExtrasTab::add);
    for (QLineEdit* line : {m_title, m_who, m_quantity, m_material, m_price}) {
        connect(line, &QLineEdit::returnPressed, this, &ExtrasTab::add);
        connect(line, &QLineEdit::textChanged, this, &ExtrasTab::sayPrice);
    }
    connect(m_task, &QComboBox::currentIndexChanged, this, &ExtrasTab::sayPrice);
}

QWidget* ExtrasTab::buttons() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& words, void (ExtrasTab::*slot)()) {
        auto* button = new QPushButton(words);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, slot);
        layout->addWidget(button);
    };
    add(tr("Appro&ved\u2026"), &ExtrasTab::approve);
    add(tr("&Done"), &ExtrasTab::markDone);
    add(tr("D&ropped"), &ExtrasTab::drop);
    add(tr("Add p&hoto\u2026"), &ExtrasTab::addPhoto);
    add(tr("Show ph&otos"), &ExtrasTab::showPhotos);
    add(tr("Pr&int for signature\u2026"), &ExtrasTab::printOne);
    layout->addStretch(1);
    return row;
}

Result<std::vector<ExtraLine>> ExtrasTab::typedLines() const {
    if (m_task->currentIndex() == 0) {
        if (!isBlank(utf8(m_quantity->text())) || !isBlank(utf8(m_material->text())))
            return badInput(
                "Choose the work that the quantity and material belong to, or leave both "
                "empty and give a price alone.");
        return std::vector<ExtraLine>();
    }
    ExtraLine line;
    line.task = Words<Task>::list[static_cast<std::size_t>(m_task->currentIndex() - 1)].value;
    const auto quantity = parseQuantity(utf8(m_quantity->text().trimmed()));
    if (!quantity)
        return quantity.error();
    line.quantity = amountCounted(*quantity, unitOf(line.task), m_bill.book().prices.shop().unit);
    if (!m_material->text().trimmed().isEmpty()) {
        const auto material = parseMoney(utf8(m_material->text().trimmed()));
        if (!material)
            return material.error();
        line.material = *material;
    }
    return std::vector{line};
}

Result<Extra> ExtrasTab::typedExtra() const {
    Extra extra;
    extra.title = utf8(m_title->text().trimmed());
    extra.askedBy = utf8(m_who->text().trimmed());
    extra.asked = m_bill.today();
    if (m_bill.house())
        extra.house = m_bill.house()->id;
    if (!m_price->text().trimmed().isEmpty()) {
        const auto price = parseMoney(utf8(m_price->text().trimmed()));
        if (!price)
            return price.error();
        extra.price = *price;
    }
    return extra;
}

void ExtrasTab::sayPrice() {
    const auto lines = typedLines();
    if (m_task->currentIndex() == 0) {
        m_says->setText(tr("With a task the book's rates say the price; a price typed in stands."));
        return;
    }
    const auto price = lines ? priceExtra(*lines, m_bill.book().prices)
                             : Result<ExtraPrice>(lines.error());
    if (!price) {
        m_says->setText(text(price.error().sentence));
        return;
    }
    m_says->setText(tr("%1 h, labour %2, material %3, overhead %4: the book's price is %5.")
                        .arg(text(formatHours(price->hours)), text(formatMoney(price->labour)),
                            text(formatMoney(price->material)), text(formatMoney(price->overhead)),
                            text(formatMoney(price->price))));
}

QString ExtrasTab::priceLine() const {
    return m_says->text();
}

void ExtrasTab::add() {
    const auto lines = typedLines();
    const auto extra = typedExtra();
    if (!lines || !extra) {
        m_bill.desk().refuse(lines ? extra.error() : lines.error());
        return;
    }
    if (!m_bill.perform(addExtra(m_bill.book(), m_bill.desk().ids(), *extra, *lines)))
        return;
    for (QLineEdit* line : {m_title, m_quantity, m_material, m_price})
        line->clear();
    m_task->setCurrentIndex(0);
    m_title->setFocus();
}

const Extra* ExtrasTab::current() const {
    const int row = m_table->currentRow();
    if (row < 0)
        return nullptr;
    return m_bill.book().jobs.of<Extra>().find(Id<Extra>(m_model->keyOfRow(row)));
}

void ExtrasTab::sayCurrent() {
    Money open;
    int count = 0;
    if (m_bill.house()) {
        for (const Extra& extra : extrasOf(m_bill.book(), m_bill.house()->id)) {
            count += lacksApproval(extra) ? 1 : 0;
            open += lacksApproval(extra) ? extra.price : Money();
        }
    }
    m_standing->setVisible(count > 0);
    m_standing->setText(tr("NOT APPROVED: %1, together %2. Do the work when somebody has said yes.")
                            .arg(counted(count, tr("1 extra"), tr("%1 extras")))
                            .arg(text(formatMoney(open, m_bill.book().prices.shop().currency))));
}

void ExtrasTab::perform(const QString& verb, const Result<Extra>& extra) {
    if (!extra) {
        m_bill.desk().refuse(extra.error());
        return;
    }
    m_bill.perform(putEdit(m_bill.book(), utf8(verb) + ' ' + extra->title, *extra));
}

void ExtrasTab::approve() {
    const Extra* extra = current();
    if (!extra)
        return;
    FieldDialog dialog(tr("Approve the extra"), tr("Record the approval"), this);
    auto* who = dialog.addText(tr("&Who said yes"), text(extra->askedBy));
    auto* when = dialog.addDate(tr("&On which day"), m_bill.today());
    Result<Extra> approved = *extra;
    const bool said = dialog.run([&]() -> Result<void> {
        const auto day = FieldDialog::dateIn(*when, m_bill.book());
        if (!day)
            return day.error();
        approved = approvedExtra(*extra, utf8(who->text().trimmed()), *day);
        return approved ? Result<void>() : Result<void>(approved.error());
    });
    if (said)
        perform(tr("Approve the extra"), approved);
}

void ExtrasTab::markDone() {
    if (const Extra* extra = current())
        perform(tr("Done with the extra"), doneExtra(*extra, m_bill.today()));
}

void ExtrasTab::drop() {
    if (const Extra* extra = current())
        perform(tr("Drop the extra"), droppedExtra(*extra));
}

void ExtrasTab::addPhoto() {
    if (const Extra* extra = current())
        choosePhoto(m_bill, *extra, this);
}

void ExtrasTab::showPhotos() {
    if (const Extra* extra = current())
        showPhotosOf(m_bill, *extra, this);
}

void ExtrasTab::printOne() {
    if (const Extra* extra = current()) {
        previewPaper(window(), extraPaper(m_bill.book(), *extra, m_bill.today()),
            m_bill.book().prices.shop().page);
    }
}

} // namespace miterbook
