// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/job_page.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "stages/stage.h"
#include "widgets/accent.h"
#include "widgets/page_stack.h"
#include "widgets/plain_text.h"
#include "windows/nav_bar.h"
#include "windows/selection_bar.h"

#include <QAction>
#include <QLabel>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

JobPage::JobPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_strip(new NavBar(tr("Stages")))
    , m_selection(new SelectionBar(desk, figures))
    , m_next(plainLabel({}))
    , m_pages(new PageStack) {
    setAccessibleName(tr("Plan or house"));
    setAccentText(*m_next);
    m_next->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_next->setAccessibleDescription(tr("Next step"));
    auto* top = new QHBoxLayout;
    top->addWidget(m_strip);
    top->addWidget(m_next, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(top);
    layout->addWidget(m_selection);
    layout->addWidget(m_pages, 1);
    setFocusProxy(m_pages);

    connect(m_strip, &NavBar::chosen, this, &JobPage::showStage);
    connect(&figures, &FigureDesk::figured, this, [this] {
        passJobOn();
        showNextStep();
    });
}

JobPage::~JobPage() = default;

void JobPage::addStage(std::unique_ptr<Stage> stage) {
    const auto number = m_stages.size() + 1;
    m_strip->add(stage->title(), tr("Ctrl+%1").arg(number));
    m_pages->addWidget(stage->page());
    connect(stage.get(), &Stage::nextStepChanged, this, &JobPage::showNextStep);
    for (QAction* action : stage->actions())
        stage->page()->addAction(action); // its keys work while the page is shown
    m_stages.push_back(std::move(stage));
}

QString JobPage::stageTitle(int stage) const {
    return m_stages[static_cast<std::size_t>(stage)]->title();
}

Stage* JobPage::current() const {
    const int index = m_pages->currentIndex();
    return index < 0 ? nullptr : m_stages[static_cast<std::size_t>(index)].get();
}

QList<QAction*> JobPage::stageActions() const {
    return current() ? current()->actions() : QList<QAction*>();
}

void JobPage::showJob() {
    passJobOn();
    showStage(0);
}

void JobPage::passJobOn() {
    const JobRef& job = m_figures.job();
    if (job == m_shown)
        return;
    m_shown = job;
    m_selection->showJob();
    if (!job)
        return;
    for (const auto& stage : m_stages)
        stage->showJob(job);
}

void JobPage::showStage(int stage) {
    if (stage < 0 || stage >= stageCount())
        return;
    m_pages->setCurrentIndex(stage);
    m_strip->setCurrent(stage);
    showNextStep();
    m_pages->currentWidget()->setFocus();
}

void JobPage::showNextStep() {
    const QString step = current() ? current()->nextStep() : QString();
    m_next->setText(step.isEmpty() ? QString() : tr("Next: %1").arg(step));
}

QString JobPage::title() const {
    const Book& book = m_desk.book();
    if (const House* house = book.house(m_figures.job().house))
        return text(house->name);
    const Plan* plan = book.plan(m_figures.job().plan);
    if (!plan)
        return {};
    const Builder* builder = book.builderOf(*plan);
    return builder ? text(plan->name + ", " + builder->name) : text(plan->name);
}

} // namespace miterbook
