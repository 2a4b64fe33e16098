// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/new_plan_dialog.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "job/new_plan.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace miterbook {

NewPlanDialog::NewPlanDialog(Desk& desk, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
    , m_builder(new QComboBox)
    , m_set(new QComboBox)
    , m_name(new QLineEdit)
    , m_area(new QLineEdit)
    , m_refused(plainLabel({})) {
    setWindowTitle(tr("New plan"));
    m_builder->setEditable(true);
    m_set->setEditable(true);
    m_builder->setMinimumWidth(fontMetrics().averageCharWidth() * 40);
    m_area->setPlaceholderText(tr("for the price by floor area only"));
    m_refused->hide();
    for (const auto& [id, builder] : desk.book().prices.of<Builder>())
        m_builder->addItem(text(builder.name), qlonglong(id.value()));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Begin"));
    connect(buttons, &QDialogButtonBox::accepted, this, &NewPlanDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Builder"), m_builder);
    form->addRow(tr("Plan &set"), m_set);
    form->addRow(tr("&Plan"), m_name);
    const LengthUnit written = desk.book().prices.shop().unit;
    form->addRow(
        written == LengthUnit::millimetres ? tr("&Floor area, m²") : tr("&Floor area, sq ft"),
        m_area);
    form->addRow(m_refused);
    form->addRow(buttons);
    connect(m_builder, &QComboBox::currentTextChanged, this, &NewPlanDialog::fillSets);
    fillSets();
    m_name->setFocus();
}

void NewPlanDialog::fillSets() {
    const QString typed = m_set->currentText();
    m_set->clear();
    const Book& book = m_desk.book();
    for (const auto& [id, set] : book.jobs.of<PlanSet>()) {
        const Builder* builder = book.prices.of<Builder>().find(set.builder);
        if (builder && text(builder->name) == m_builder->currentText().trimmed())
            m_set->addItem(text(set.name));
    }
    if (m_set->count() == 0)
        m_set->setEditText(typed);
}

void NewPlanDialog::refuse(const Error& error) {
    m_refused->setText(text(error.sentence));
    m_refused->show();
}

void NewPlanDialog::accept() {
    NewPlan wanted;
    wanted.builder = utf8(m_builder->currentText().trimmed());
    wanted.set = utf8(m_set->currentText().trimmed());
    wanted.name = utf8(m_name->text().trimmed());
    if (!m_area->text().trimmed().isEmpty()) {
        const auto area = parseWhole(utf8(m_area->text()), "The floor area", 0, 1'000'000);
        if (!area)
            return refuse(area.error());
        wanted.floorArea = floorCounted(*area, m_desk.book().prices.shop().unit);
    }
    auto edit = newPlan(m_desk.book(), m_desk.ids(), wanted);
    if (!edit)
        return refuse(edit.error());
    m_edit = std::move(*edit);
    QDialog::accept();
}

} // namespace miterbook
