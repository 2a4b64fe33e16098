// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/review_stage.h"

#include "stages/paper_actions.h"
#include "stages/review/review_desk.h"
#include "stages/review/review_page.h"

#include <QAction>

namespace miterbook {

ReviewStage::ReviewStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_page(new ReviewPage(desk, figures)) {
    for (const std::string_view paper : {"house-review", "plan-comparison"}) {
        auto* actions = new PaperActions(paper, desk, figures, m_page);
        // Ctrl+P is the house's; a key that two actions claim does nothing.
        if (paper != "house-review")
            actions->actions().front()->setShortcut({});
        m_actions << actions->actions();
    }
    connect(&m_page->review(), &ReviewDesk::changed, this, &Stage::nextStepChanged);
}

ReviewStage::~ReviewStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString ReviewStage::title() const {
    return tr("Review");
}

QWidget* ReviewStage::page() {
    return m_page;
}

void ReviewStage::showJob(const JobRef&) {
}

QString ReviewStage::nextStep() const {
    return m_page->nextStep();
}

} // namespace miterbook
