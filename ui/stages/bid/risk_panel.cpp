// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/risk_panel.h"

#include "desk/desk.h"
#include "figures/figure_view.h"
#include "job/risk_history.h"
#include "stages/bid/risk_curve.h"
#include "stages/bid/risk_rows.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

RiskPanel::RiskPanel(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_words(plainLabel({}, this))
    , m_curve(new RiskCurve(this))
    , m_certainties(new FigureView(tr("Price by certainty"), certaintyTitles(), this))
    , m_works(new FigureView(tr("Risk by piece of work"), workRiskTitles(), this)) {
    m_words->setAccessibleDescription(tr("The chance of making money"));
    m_words->setWordWrap(true);
    auto* tables = new QSplitter(this);
    tables->addWidget(m_certainties);
    tables->addWidget(m_works);
    tables->setSizes({270, 530});
    tables->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_words);
    column->addWidget(m_curve);
    column->addWidget(tables, 1);
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        if (touchesHistory(changes))
            m_belief.reset();
    });
}

const RiskBelief& RiskPanel::belief() {
    if (!m_belief)
        m_belief = riskBelief(finishedWorks(m_desk.book()));
    return *m_belief;
}

void RiskPanel::showFigures(const JobFigures& figures) {
    const RiskOutlook outlook(figures.estimate, belief());
    m_words->setText(riskSentences(outlook, m_desk.book().prices.shop().currency));
    m_curve->setVisible(outlook.any());
    m_curve->show(outlook, figures.estimate.total.hours);
    m_certainties->setRows(certaintyRows(outlook, figures.estimate.total.profit));
    m_works->setRows(workRiskRows(outlook));
}

} // namespace miterbook
