// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/bid_stage.h"

#include "desk/figure_desk.h"
#include "stages/bid/bid_page.h"
#include "stages/bid/sent_tab.h"
#include "stages/paper_actions.h"

#include <QAction>

namespace miterbook {

BidStage::BidStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_figures(figures)
    , m_page(new BidPage(desk, figures))
    , m_paper(new PaperActions("bid", desk, figures, m_page))
    , m_sheet(new PaperActions("price-sheet", desk, figures, m_page))
    , m_worksheet(new PaperActions("worksheet", desk, figures, m_page))
    , m_send(new QAction(tr("&Send the bid\u2026"), m_page)) {
    m_send->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B));
    m_send->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    m_page->addAction(m_send);
    connect(m_send, &QAction::triggered, &m_page->sent(), &SentTab::send);
    for (PaperActions* other : {m_sheet, m_worksheet})
        other->actions().front()->setShortcut({}); // Ctrl+P is the bid's
    connect(&figures, &FigureDesk::figured, this, &Stage::nextStepChanged);
}

BidStage::~BidStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString BidStage::title() const {
    return tr("Bid");
}

QWidget* BidStage::page() {
    return m_page;
}

void BidStage::showJob(const JobRef& job) {
    m_page->showJob(job);
}

QList<QAction*> BidStage::actions() const {
    return QList<QAction*>{m_send} + m_paper->actions() + m_sheet->actions()
        + m_worksheet->actions();
}

QString BidStage::nextStep() const {
    const Estimate& estimate = m_figures.figures().estimate;
    if (estimate.works.empty())
        return tr("there is nothing to price yet: enter the plan first");
    if (!estimate.problems.empty())
        return tr("clear up what is printed in bold before this price leaves the shop");
    return tr(
        "check the hours and the profit, then print the bid (Ctrl+P) or send it (Ctrl+Shift+B)");
}

} // namespace miterbook
