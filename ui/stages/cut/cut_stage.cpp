// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/cut_stage.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_edits.h"
#include "stages/cut/cut_page.h"
#include "stages/cut/measures_tab.h"
#include "stages/paper_actions.h"

#include <QAction>

namespace miterbook {

CutStage::CutStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_page(new CutPage(desk, figures)) {
    m_actions << m_page->measures().planSizesAction() << m_page->measures().bringAction();
    auto* keep = new QAction(tr("&Keep the numbers of the saw sheet"), this);
    connect(keep, &QAction::triggered, this, &CutStage::keepNumbers);
    m_actions << keep;
    for (const std::string_view paper : {"saw-sheet", "measure", "sticks", "labels", "assembly"}) {
        auto* actions = new PaperActions(paper, desk, figures, m_page);
        const QList<QAction*> own = actions->actions();
        // Ctrl+P is the saw sheet's; a key that two actions claim does nothing.
        if (paper != "saw-sheet")
            own.front()->setShortcut({});
        m_actions << own.front();
    }
    connect(&m_page->cut(), &CutDesk::reckoned, this, &Stage::nextStepChanged);
}

CutStage::~CutStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString CutStage::title() const {
    return tr("Cut");
}

QWidget* CutStage::page() {
    return m_page;
}

void CutStage::showJob(const JobRef&) {
}

QString CutStage::nextStep() const {
    return m_page->nextStep();
}

void CutStage::keepNumbers() {
    CutDesk& cut = m_page->cut();
    if (cut.plan())
        cut.desk().perform(keepNumbersEdit(
            cut.book(), cut.desk().ids(), cut.plan(), cut.figures().sheet, cut.level()));
}

} // namespace miterbook
