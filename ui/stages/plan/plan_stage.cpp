// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_stage.h"

#include "desk/figure_desk.h"
#include "stages/paper_actions.h"
#include "stages/plan/plan_page.h"

#include <QAction>

namespace miterbook {

PlanStage::PlanStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_page(new PlanPage(desk, figures)) {
    const auto bring = [this](const QString& words, ScheduleKind kind) {
        auto* action = new QAction(words, this);
        connect(action, &QAction::triggered, m_page, [this, kind] { m_page->bringSchedule(kind); });
        m_actions.append(action);
    };
    bring(tr("Bring in a &window schedule\u2026"), ScheduleKind::windows);
    bring(tr("Bring in a &door schedule\u2026"), ScheduleKind::doors);
    bring(tr("Bring in a &room schedule\u2026"), ScheduleKind::rooms);
    auto* restore = new QAction(tr("Take rows as in the &base plan"), this);
    connect(restore, &QAction::triggered, m_page, &PlanPage::restoreRows);
    m_actions.append(restore);
    m_actions.append(m_page->drawingActions());
    m_actions.append((new PaperActions("plan", desk, figures, m_page))->actions());
    connect(&figures, &FigureDesk::figured, this, &Stage::nextStepChanged);
}

PlanStage::~PlanStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString PlanStage::title() const {
    return tr("Plan");
}

QWidget* PlanStage::page() {
    return m_page;
}

void PlanStage::showJob(const JobRef& job) {
    m_page->showJob(job);
}

QString PlanStage::nextStep() const {
    return m_page->nextStep();
}

} // namespace miterbook
