// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/what_if_panel.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/order/what_if_form.h"
#include "stages/order/what_if_rows.h"
#include "stages/order/what_if_search.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

WhatIfPanel::WhatIfPanel(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_form(new WhatIfForm(this))
    , m_sentence(new QLabel(this))
    , m_clear(new QPushButton(tr("As it is &again"), this))
    , m_view(new FigureView(
          tr("What if"), {tr("What"), tr("As it is"), tr("What if"), tr("Difference")}, this))
    , m_search(new WhatIfSearch(this)) {
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setWordWrap(true);
    m_sentence->setAccessibleDescription(tr("What it would change"));
    m_clear->setAutoDefault(false);
    auto* line = new QHBoxLayout;
    line->addWidget(m_sentence, 1);
    line->addWidget(m_clear);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_form);
    layout->addLayout(line);
    layout->addWidget(m_view, 1);
    connect(m_form, &WhatIfForm::edited, this, &WhatIfPanel::ask);
    connect(m_clear, &QPushButton::clicked, this, [this] {
        m_form->clear();
        ask();
    });
    connect(m_search, &WhatIfSearch::answered, this, &WhatIfPanel::show);
    connect(&figures, &FigureDesk::figured, this, &WhatIfPanel::refresh);
    refresh();
}

QString WhatIfPanel::sentence() const {
    return m_sentence->text();
}

bool WhatIfPanel::busy() const {
    return m_search->busy();
}

void WhatIfPanel::refresh() {
    m_form->offer(m_figures.figures(), m_desk.book().prices);
    ask();
}

void WhatIfPanel::ask() {
    m_search->stop();
    const auto whatIf = m_form->whatIf();
    const std::vector<StickPlan>& now = m_figures.figures().sticks;
    if (!whatIf) {
        say(text(whatIf.error().sentence));
        return;
    }
    m_clear->setEnabled(!whatIf->nothing());
    if (whatIf->nothing()) {
        m_view->setRows(whatIfRows(now, now, m_desk.book().prices));
        say(tr("Alter anything above to see what the order would come to. The book stays as it "
               "is."));
        return;
    }
    say(tr("Planning…"));
    m_search->ask(m_figures.figures(), m_desk.book().prices, *whatIf);
}

void WhatIfPanel::show(const Result<std::vector<StickPlan>>& plans) {
    if (!plans) {
        say(text(plans.error().sentence));
        return;
    }
    const std::vector<StickPlan>& now = m_figures.figures().sticks;
    const PriceBook& prices = m_desk.book().prices;
    m_view->setRows(whatIfRows(now, *plans, prices));
    std::vector<std::string> problems;
    for (const StickPlan& plan : *plans) {
        if (!plan.problem.empty())
            problems.push_back(plan.problem);
    }
    const auto asked = m_form->whatIf();
    const WhatIf whatIf = asked ? *asked : WhatIf();
    say(problems.empty() ? whatIfSentence(whatIf, now, *plans, prices)
                         : tr("It cannot all be cut then.") + QLatin1Char('\n') + lines(problems));
}

void WhatIfPanel::say(const QString& sentence) {
    m_sentence->setText(sentence);
}

} // namespace miterbook
