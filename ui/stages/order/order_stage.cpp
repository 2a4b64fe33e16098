// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/order_stage.h"

#include "desk/figure_desk.h"
#include "stages/order/order_page.h"
#include "stages/paper_actions.h"

namespace miterbook {

OrderStage::OrderStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_figures(figures)
    , m_page(new OrderPage(desk, figures))
    , m_paper(new PaperActions("order", desk, figures, m_page)) {
    connect(&figures, &FigureDesk::figured, this, &Stage::nextStepChanged);
}

OrderStage::~OrderStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

QString OrderStage::title() const {
    return tr("Order");
}

QWidget* OrderStage::page() {
    return m_page;
}

void OrderStage::showJob(const JobRef&) {
}

QList<QAction*> OrderStage::actions() const {
    return m_paper->actions();
}

QString OrderStage::nextStep() const {
    const BuyList& buy = m_figures.figures().buy;
    if (buy.sticks.empty() && buy.parts.empty())
        return tr("there is nothing to buy yet: enter the plan first");
    if (!buy.problems.empty())
        return tr("some of it cannot be bought: see what is printed in bold");
    return tr("check the lengths with the yard, then print the order (Ctrl+P)");
}

} // namespace miterbook
