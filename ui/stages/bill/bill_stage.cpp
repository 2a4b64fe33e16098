// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/bill_stage.h"

#include "stages/bill/bill_desk.h"
#include "stages/bill/bill_page.h"
#include "stages/bill/draw_tab.h"
#include "stages/bill/extras_tab.h"
#include "stages/bill/invoices_tab.h"

#include <QAction>
#include <QTabWidget>

namespace miterbook {

BillStage::BillStage(Desk& desk, FigureDesk& figures, QObject* parent)
    : Stage(parent)
    , m_page(new BillPage(desk, figures)) {
    add(tr("Print the e&xtra for signature\u2026"), {}, 0, &m_page->extras(), &ExtrasTab::printOne);
    add(tr("&Issue the draw\u2026"), {}, 1, &m_page->draw(), &DrawTab::issueDraw);
    add(tr("Ask for a &deposit\u2026"), {}, 1, &m_page->draw(), &DrawTab::askDeposit);
    add(tr("&Release retainage\u2026"), {}, 1, &m_page->draw(), &DrawTab::releaseRetainage);
    add(tr("Print preview: &invoice\u2026"), QKeySequence::Print, 2, &m_page->invoices(),
        &InvoicesTab::printOne);
    add(tr("&Credit note\u2026"), {}, 2, &m_page->invoices(), &InvoicesTab::creditOne);
    add(tr("&Void the invoice\u2026"), {}, 2, &m_page->invoices(), &InvoicesTab::voidOne);
    add(tr("Record a &payment\u2026"), {}, 2, &m_page->invoices(), &InvoicesTab::recordPayment);
    add(tr("&Statement of the builder\u2026"), {}, 2, &m_page->invoices(),
        &InvoicesTab::printStatement);
    connect(&m_page->bill(), &BillDesk::reckoned, this, &Stage::nextStepChanged);
}

BillStage::~BillStage() {
    if (m_page && !m_page->parent())
        delete m_page;
}

void BillStage::add(
    const QString& words, const QKeySequence& keys, int tab, auto* page, auto slot) {
    auto* action = new QAction(words, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, page, [this, page, slot, tab] {
        m_page->tabs().setCurrentIndex(tab);
        (page->*slot)();
    });
    m_page->addAction(action);
    m_actions << action;
}

QString BillStage::title() const {
    return tr("Bill");
}

QWidget* BillStage::page() {
    return m_page;
}

void BillStage::showJob(const JobRef&) {
}

QString BillStage::nextStep() const {
    return m_page->nextStep();
}

} // namespace miterbook
