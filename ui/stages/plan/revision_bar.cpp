// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/revision_bar.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "stages/plan/revision_dialog.h"
#include "widgets/plain_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace miterbook {

namespace {

/// Whether a change is of a plan, or of a house's ties to one.
bool isOfPlan(const Change& change, Id<Plan> plan) {
    return change.row().is<PlanTie>() || planOf(change.row()) == plan;
}

} // namespace

RevisionBar::RevisionBar(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_words(plainLabel({})) {
    auto* look = new QPushButton(tr("Look at the re&visions\u2026"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words, 1);
    layout->addWidget(look);
    m_words->setAccessibleDescription(tr("What the builder's plan has changed"));
    connect(look, &QPushButton::clicked, this, &RevisionBar::ask);
    connect(&desk, &Desk::changed, this, &RevisionBar::follow);
    hide();
}

void RevisionBar::refresh() {
    const House* house = m_desk.book().house(m_figures.job().house);
    m_revisions.clear();
    if (house && house->plan && m_desk.openPlan(house->plan))
        m_revisions = revisionsFor(m_desk.book(), house->id);
    const auto count = static_cast<qsizetype>(m_revisions.size());
    m_words->setText(counted(count,
        tr("The builder's plan has been revised since: one thing differs from this house."),
        tr("The builder's plan has been revised since: %1 things differ from this house.")));
    setVisible(count > 0);
}

/// Comparing takes longer than a keystroke may, so it is done only where it can come out otherwise.
void RevisionBar::follow(const std::vector<Change>& changes) {
    const House* house = m_desk.book().house(m_figures.job().house);
    if (house && std::ranges::any_of(changes, [&](const Change& change) {
            return isOfPlan(change, house->plan);
        }))
        refresh();
}

void RevisionBar::settle(
    const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept) {
    m_desk.perform(revisionEdit(m_desk.book(), m_desk.ids(), m_figures.job().house, taken, kept));
}

void RevisionBar::ask() {
    RevisionDialog dialog(m_revisions, window());
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (dialog.takes())
        settle(dialog.chosen(), {});
    else
        settle({}, dialog.chosen());
}

} // namespace miterbook
