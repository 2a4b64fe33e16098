// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/selection_bar.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "widgets/plain_text.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QToolButton>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

SelectionBar::SelectionBar(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_house(hintLabel({}))
    , m_for(plainLabel(tr("Figures with:")))
    , m_elevation(new QComboBox)
    , m_options(new QToolButton)
    , m_choices(new QMenu(this)) {
    m_house->setWordWrap(false);
    m_for->setWordWrap(false);
    m_elevation->setAccessibleName(tr("Elevation"));
    m_elevation->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_options->setAccessibleName(tr("Options"));
    m_options->setPopupMode(QToolButton::InstantPopup);
    m_options->setMenu(m_choices);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_for);
    layout->addWidget(m_elevation);
    layout->addWidget(m_options);
    layout->addWidget(m_house);
    layout->addStretch(1);
    connect(m_elevation, &QComboBox::activated, this, &SelectionBar::take);
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        if (touches<Variant>(changes))
            showJob();
    });
}

void SelectionBar::showJob() {
    m_filling = true;
    const JobRef& job = m_figures.job();
    const Book& book = m_desk.book();
    fillElevations();
    fillOptions();
    const bool variants = m_elevation->count() > 1 || !m_choices->isEmpty();
    m_for->setVisible(variants);
    m_elevation->setVisible(m_elevation->count() > 1);
    m_options->setVisible(!m_choices->isEmpty());
    QString words;
    if (const House* house = book.house(job.house)) {
        const Plan* plan = book.plan(house->plan);
        words = tr("House on plan %1").arg(plan ? text(plan->name) : QString());
        if (!house->lot.empty())
            words += tr(", lot %1").arg(text(house->lot));
    }
    m_house->setText(words);
    setVisible(variants || !words.isEmpty());
    m_filling = false;
}

void SelectionBar::fillElevations() {
    const JobRef& job = m_figures.job();
    m_elevation->clear();
    m_elevation->addItem(tr("base plan"), qlonglong(0));
    for (const auto& [id, variant] : m_desk.book().sheet(job.plan).of<Variant>()) {
        if (variant.kind == VariantKind::elevation)
            m_elevation->addItem(tr("elevation %1").arg(text(variant.name)), qlonglong(id.value()));
    }
    const int at = m_elevation->findData(qlonglong(job.selection.elevation.value()));
    m_elevation->setCurrentIndex(std::max(0, at));
}

void SelectionBar::fillOptions() {
    const JobRef& job = m_figures.job();
    m_choices->clear();
    int chosen = 0;
    for (const auto& [id, variant] : m_desk.book().sheet(job.plan).of<Variant>()) {
        if (variant.kind != VariantKind::option)
            continue;
        QAction* action = m_choices->addAction(menuText(text(variant.name)));
        action->setCheckable(true);
        action->setData(qlonglong(id.value()));
        action->setChecked(std::ranges::count(job.selection.options, id) > 0);
        chosen += action->isChecked() ? 1 : 0;
        connect(action, &QAction::toggled, this, &SelectionBar::take);
    }
    m_options->setText(
        chosen == 0 ? tr("no options") : counted(chosen, tr("1 option"), tr("%1 options")));
}

void SelectionBar::take() {
    if (m_filling)
        return;
    JobRef job = m_figures.job();
    job.selection = {};
    job.selection.elevation = Id<Variant>(m_elevation->currentData().toLongLong());
    for (const QAction* action : m_choices->actions()) {
        if (action->isChecked())
            job.selection.options.push_back(Id<Variant>(action->data().toLongLong()));
    }
    // Later: the menu whose action speaks here is filled anew when the job changes.
    QMetaObject::invokeMethod(
        this, [this, job] { m_figures.setJob(job); }, Qt::QueuedConnection);
}

} // namespace miterbook
