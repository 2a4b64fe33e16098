// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/what_if_tab.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "job/risk_history.h"
#include "stages/bid/what_if_rows.h"
#include "widgets/data_table.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

WhatIfTab::WhatIfTab(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_model(scenarioModel())
    , m_outcomes(new FigureView(tr("Side by side"), outcomeTitles(), this)) {
    auto* panel = new TablePanel(*m_model, this);
    m_table = &panel->table();
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(panel);
    split->addWidget(m_outcomes);
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(split);
    connect(&figures, &FigureDesk::figured, this, &WhatIfTab::refresh);
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        if (touchesHistory(changes))
            m_belief.reset();
        refresh();
    });
}

TableModelBase* WhatIfTab::scenarioModel() {
    TableSpec<Scenario> spec;
    spec.name = tr("Scenarios");
    spec.columns = scenarioColumns();
    spec.rows = [this] { return scenariosOf(m_desk.book(), m_job.plan); };
    spec.blank = [this](int) {
        const BidSetup* setup = m_desk.book().bidSetup(m_job.plan);
        return scenarioFrom(
            setup ? *setup : setupFrom(m_desk.book().prices.terms(), m_job.plan), {});
    };
    spec.check = checkScenario;
    spec.copied = [](Scenario& row, int) { row.name += " copy"; };
    spec.emptyHint = tr(
        "Name a scenario above and type what would be otherwise: wages at 110 %, material "
        "at 95 %, one task at other minutes, another profile, another profit. The book "
        "stays as it is.");
    return new TableModel<Scenario>(m_desk, std::move(spec), this);
}

void WhatIfTab::showJob(const JobRef& job) {
    m_job = job;
    setEnabled(static_cast<bool>(job));
    m_model->refresh();
    refresh();
}

void WhatIfTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_model->refresh();
    refresh();
}

const RiskBelief& WhatIfTab::belief() {
    if (!m_belief)
        m_belief = riskBelief(finishedWorks(m_desk.book()));
    return *m_belief;
}

void WhatIfTab::refresh() {
    if (!isVisible() || !m_job || m_figures.job() != m_job)
        return; // when it is shown
    const JobFigures& today = m_figures.figures();
    std::vector<BidOutcome> outcomes{
        outcomeOf(utf8(tr("the bid as it is")), today.estimate, belief())};
    for (const Scenario& scenario : scenariosOf(m_desk.book(), m_job.plan)) {
        const JobFigures then = figuresIf(
            m_desk.book(), m_job.plan, m_job.selection, scenario, today, m_memory);
        outcomes.push_back(outcomeOf(scenario.name, then.estimate, belief()));
    }
    m_outcomes->setRows(outcomeRows(outcomes));
}

} // namespace miterbook
