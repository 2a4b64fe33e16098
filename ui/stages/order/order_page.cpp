// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/order_page.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/order/order_rows.h"
#include "stages/order/what_if_panel.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

OrderPage::OrderPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_summary(new QLabel(this))
    , m_problems(new QLabel(this))
    , m_progress(new QProgressBar(this))
    , m_search(new QPushButton(this))
    , m_buy(new FigureView(tr("Buy list"),
          {tr("What"), tr("Length"), tr("Count"), tr("Spare"), tr("Price each"), tr("Cost")}, this))
    , m_patterns(new FigureView(tr("How the sticks are cut"),
          {tr("Profile"), tr("Stick"), tr("From"), tr("Sticks"), tr("Left over"), tr("Pieces")},
          this))
    , m_whatIf(new WhatIfPanel(desk, figures, this)) {
    buildLabels();
    buildSearch();
    layOut();
    connect(&figures, &FigureDesk::figured, this, &OrderPage::refresh);
    refresh();
}

void OrderPage::buildLabels() {
    for (QLabel* label : {m_summary, m_problems}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    m_summary->setAccessibleDescription(tr("What the order costs"));
    m_problems->setAccessibleName(tr("What cannot be bought"));
    QFont bold = m_problems->font();
    bold.setBold(true);
    m_problems->setFont(bold);
}

void OrderPage::buildSearch() {
    m_progress->setAccessibleName(tr("Profiles planned"));
    m_progress->setTextVisible(false);
    m_progress->setFixedWidth(m_progress->fontMetrics().averageCharWidth() * 16);
    m_search->setAutoDefault(false);
    connect(m_search, &QPushButton::clicked, this, [this] {
        if (m_figures.settled())
            m_figures.resumeSearch();
        else
            m_figures.stopSearch();
    });
}

void OrderPage::layOut() {
    auto* tabs = new QTabWidget(this);
    tabs->addTab(m_buy, tr("Buy list"));
    tabs->addTab(m_patterns, tr("How the sticks are cut"));
    tabs->addTab(m_whatIf, tr("What if"));
    auto* top = new QHBoxLayout;
    top->addWidget(m_summary, 1);
    top->addWidget(m_progress);
    top->addWidget(m_search);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(m_problems);
    layout->addWidget(tabs, 1);
}

void OrderPage::refresh() {
    const JobFigures& figures = m_figures.figures();
    const PriceBook& prices = m_desk.book().prices;
    const QString total = text(formatMoney(figures.buy.total(), prices.shop().currency));
    const QString bound = boundText(figures.sticks, prices);
    m_summary->setText(m_figures.settled() || m_figures.unsettled() == 0
            ? tr("The order comes to %1, %2.").arg(total, bound)
            : tr("The order comes to %1, %2; looking for a cheaper way, %3 of %4 profiles done.")
                  .arg(total, bound)
                  .arg(figures.sticks.size() - static_cast<std::size_t>(m_figures.unsettled()))
                  .arg(figures.sticks.size()));
    m_problems->setText(lines(figures.buy.problems));
    m_problems->setVisible(!figures.buy.problems.empty());
    m_buy->setRows(buyRows(figures, prices));
    m_patterns->setRows(patternRows(figures, prices));
    showSearch();
}

void OrderPage::showSearch() {
    const int all = static_cast<int>(m_figures.figures().sticks.size());
    const int open = m_figures.unsettled();
    m_progress->setMaximum(std::max(all, 1));
    m_progress->setValue(all - open);
    m_progress->setVisible(!m_figures.settled());
    m_search->setVisible(open > 0);
    m_search->setText(m_figures.settled() ? tr("&Look for a cheaper way") : tr("&Stop looking"));
}

} // namespace miterbook
