// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/order_page.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "stages/order/order_rows.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"

#include <QLabel>
#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

OrderPage::OrderPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_summary(new QLabel(this))
    , m_problems(new QLabel(this)) {
    for (QLabel* label : {m_summary, m_problems}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    m_summary->setAccessibleName(tr("What the order costs"));
    m_problems->setAccessibleName(tr("What cannot be bought"));
    QFont bold = m_problems->font();
    bold.setBold(true);
    m_problems->setFont(bold);
    m_buy = new FigureView(tr("Buy list"),
        {tr("What"), tr("Length"), tr("Count"), tr("Spare"), tr("Price each"), tr("Cost")}, this);
    m_patterns = new FigureView(tr("How the sticks are cut"),
        {tr("Profile"), tr("Stick"), tr("From"), tr("Sticks"), tr("Left over"), tr("Pieces")}, this);
    auto* tabs = new QTabWidget(this);
    tabs->addTab(m_buy, tr("Buy list"));
    tabs->addTab(m_patterns, tr("How the sticks are cut"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    layout->addWidget(m_problems);
    layout->addWidget(tabs, 1);
    connect(&figures, &FigureDesk::figured, this, [this] { refresh(); });
    refresh();
}

void OrderPage::refresh() {
    const JobFigures& figures = m_figures.figures();
    const std::string symbol = m_desk.book().prices.shop().currency;
    const QString total = text(formatMoney(figures.buy.total(), symbol));
    m_summary->setText(m_figures.settled()
            ? tr("The order comes to %1, %2.").arg(total, boundText(figures.sticks))
            : tr("The order comes to %1; looking for a cheaper stick plan…").arg(total));
    m_problems->setText(lines(figures.buy.problems));
    m_problems->setVisible(!figures.buy.problems.empty());
    const PriceBook& prices = m_desk.book().prices;
    m_buy->setRows(buyRows(figures, prices));
    m_patterns->setRows(patternRows(figures, prices));
}

} // namespace miterbook
