// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/target_bar.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace miterbook {

TargetBar::TargetBar(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_choice(new QComboBox)
    , m_hint(hintLabel({})) {
    auto* label = new QLabel(tr("Changes &go into"));
    label->setBuddy(m_choice);
    m_choice->setAccessibleName(tr("Changes go into"));
    m_choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(m_choice);
    layout->addWidget(m_hint, 1);
    connect(m_choice, &QComboBox::activated, this, &TargetBar::take);
    connect(&desk, &Desk::changed, this, &TargetBar::fill);
}

void TargetBar::showPlan(Id<Plan> plan) {
    if (plan != m_target.plan)
        m_target = {plan, {}};
    fill();
}

void TargetBar::fill() {
    const auto& variants = m_desk.book().sheet(m_target.plan).of<Variant>();
    m_choice->clear();
    m_choice->addItem(tr("the base plan"), qlonglong(0));
    for (const auto& [id, variant] : variants)
        m_choice->addItem(
            text(word(variant.kind)) + QChar(u' ') + text(variant.name), qlonglong(id.value()));
    const int at = m_choice->findData(qlonglong(m_target.variant.value()));
    m_choice->setCurrentIndex(std::max(0, at));
    setVisible(!variants.empty());
    m_hint->setText(m_target.variant
            ? tr("Rows are marked added, changed or removed against the base plan.")
            : QString());
    if (at < 0)
        take(); // the variant is gone: changes go into the base plan again
}

void TargetBar::choose(Id<Variant> variant) {
    m_choice->setCurrentIndex(std::max(0, m_choice->findData(qlonglong(variant.value()))));
    take();
}

void TargetBar::take() {
    m_target.variant = Id<Variant>(m_choice->currentData().toLongLong());
    m_hint->setText(m_target.variant
            ? tr("Rows are marked added, changed or removed against the base plan.")
            : QString());
    Q_EMIT chosen(m_target);
}

} // namespace miterbook
