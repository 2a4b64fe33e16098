// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/start_house_dialog.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

StartHouseDialog::StartHouseDialog(Desk& desk, Id<Plan> plan, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
    , m_plan(new QComboBox)
    , m_elevation(new QComboBox)
    , m_options(new QListWidget)
    , m_name(new QLineEdit)
    , m_lot(new QLineEdit)
    , m_address(new QLineEdit)
    , m_refused(plainLabel({})) {
    setWindowTitle(tr("Start a house"));
    m_options->setMaximumHeight(fontMetrics().height() * 8);
    m_options->setAccessibleName(tr("Options"));
    m_name->setMinimumWidth(fontMetrics().averageCharWidth() * 48);
    m_name->setPlaceholderText(tr("what you call it, such as Lot 14"));
    m_refused->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Start"));
    connect(buttons, &QDialogButtonBox::accepted, this, &StartHouseDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Plan"), m_plan);
    form->addRow(tr("&Elevation"), m_elevation);
    form->addRow(tr("&Options"), m_options);
    form->addRow(tr("&Name"), m_name);
    form->addRow(tr("&Lot"), m_lot);
    form->addRow(tr("&Address"), m_address);
    form->addRow(m_refused);
    form->addRow(buttons);
    connect(m_plan, &QComboBox::currentIndexChanged, this, &StartHouseDialog::showPlan);
    fillPlans(plan);
    showPlan();
    m_name->setFocus();
}

void StartHouseDialog::fillPlans(Id<Plan> chosen) {
    const Book& book = m_desk.book();
    for (const auto& [id, plan] : book.jobs.of<Plan>()) {
        if (plan.house)
            continue;
        const Builder* builder = book.builderOf(plan);
        m_plan->addItem(text(plan.name) + (builder ? u", "_s + text(builder->name) : QString()),
            qlonglong(id.value()));
    }
    m_plan->setCurrentIndex(std::max(0, m_plan->findData(qlonglong(chosen.value()))));
}

void StartHouseDialog::showPlan() {
    m_elevation->clear();
    m_options->clear();
    m_elevation->addItem(tr("base plan"), qlonglong(0));
    const Id<Plan> plan(m_plan->currentData().toLongLong());
    if (!plan || !m_desk.openPlan(plan))
        return;
    for (const auto& [id, variant] : m_desk.book().sheet(plan).of<Variant>()) {
        if (variant.kind == VariantKind::elevation) {
            m_elevation->addItem(text(variant.name), qlonglong(id.value()));
            continue;
        }
        auto* item = new QListWidgetItem(text(variant.name), m_options);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(Qt::Unchecked);
        item->setData(Qt::UserRole, qlonglong(id.value()));
    }
    m_elevation->setEnabled(m_elevation->count() > 1);
    m_options->setEnabled(m_options->count() > 0);
}

HouseStart StartHouseDialog::start() const {
    HouseStart start;
    start.plan = Id<Plan>(m_plan->currentData().toLongLong());
    start.selection.elevation = Id<Variant>(m_elevation->currentData().toLongLong());
    for (int i = 0; i < m_options->count(); ++i) {
        const QListWidgetItem* item = m_options->item(i);
        if (item->checkState() == Qt::Checked)
            start.selection.options.push_back(Id<Variant>(item->data(Qt::UserRole).toLongLong()));
    }
    start.name = utf8(m_name->text());
    start.lot = utf8(m_lot->text().trimmed());
    start.address = utf8(m_address->text().trimmed());
    start.started = m_desk.clock().today();
    return start;
}

void StartHouseDialog::accept() {
    auto edit = startHouse(m_desk.book(), m_desk.ids(), start());
    if (!edit) {
        m_refused->setText(text(edit.error().sentence));
        m_refused->show();
        return;
    }
    m_edit = std::move(*edit);
    QDialog::accept();
}

} // namespace miterbook
