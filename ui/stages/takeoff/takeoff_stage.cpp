// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/takeoff/takeoff_stage.h"

#include "desk/figure_desk.h"
#include "stages/paper_actions.h"
#include "stages/takeoff/takeoff_page.h"

#include <algorithm>

namespace miterbook {

TakeoffStage::TakeoffStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_figures(figures)
    , m_page(new TakeoffPage(desk, figures))
    , m_paper(new PaperActions("takeoff", desk, figures, m_page)) {
    connect(&figures, &FigureDesk::figured, this, &Stage::nextStepChanged);
}

TakeoffStage::~TakeoffStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString TakeoffStage::title() const {
    return tr("Takeoff");
}

QWidget* TakeoffStage::page() {
    return m_page;
}

void TakeoffStage::showJob(const JobRef&) {
}

QList<QAction*> TakeoffStage::actions() const {
    return m_paper->actions();
}

QString TakeoffStage::nextStep() const {
    const Takeoff& takeoff = m_figures.figures().takeoff;
    if (takeoff.pieces.empty() && takeoff.tasks.size() <= 1)
        return tr("enter rooms and openings on the Plan page; the takeoff follows");
    const auto problems = std::ranges::count(
        takeoff.remarks, Remark::Weight::problem, &Remark::weight);
    if (problems > 0)
        return tr("%n thing(s) could not be counted: see To look at", nullptr,
            static_cast<int>(problems));
    return tr("read the totals against the plan set, then price the bid");
}

} // namespace miterbook
