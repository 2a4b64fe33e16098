// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/hours_stage.h"

#include "stages/hours/hours_dialog.h"
#include "stages/hours/hours_page.h"
#include "stages/hours/week_desk.h"
#include "stages/hours/week_tab.h"
#include "stages/paper_actions.h"

#include <QAction>

namespace miterbook {

HoursStage::HoursStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_desk(desk)
    , m_page(new HoursPage(desk, figures)) {
    auto* bring = new QAction(tr("&Bring in hours\u2026"), this);
    connect(bring, &QAction::triggered, this, &HoursStage::bringIn);
    m_actions << bring << m_page->grid().actions();
    for (const std::string_view paper : {"time-sheet", "pay-sheet"}) {
        auto* actions = new PaperActions(paper, desk, figures, m_page);
        actions->setDay([page = m_page] { return page->week().first(); });
        // Ctrl+P is the time sheet's; a key that two actions claim does nothing.
        if (paper != "time-sheet")
            actions->actions().front()->setShortcut({});
        m_actions << actions->actions();
    }
    connect(&m_page->week(), &WeekDesk::changed, this, &Stage::nextStepChanged);
}

HoursStage::~HoursStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString HoursStage::title() const {
    return tr("Hours");
}

QWidget* HoursStage::page() {
    return m_page;
}

void HoursStage::showJob(const JobRef&) {
}

QString HoursStage::nextStep() const {
    return m_page->nextStep();
}

void HoursStage::bringIn() {
    HoursDialog dialog(m_desk, m_page);
    dialog.exec();
}

} // namespace miterbook
