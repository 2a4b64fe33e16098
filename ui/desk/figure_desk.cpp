// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/figure_desk.h"

#include "desk/desk.h"
#include "job/figure_changes.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace miterbook {

FigureDesk::FigureDesk(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, &FigureDesk::takeIn);
}

FigureDesk::~FigureDesk() {
    endSearch();
}

void FigureDesk::setJob(const JobRef& job) {
    if (job.plan && !m_desk.openPlan(job.plan))
        return;
    m_job = job;
    recompute();
}

/// A tick at the saw leaves price and order as they are, and the search for them goes on.
void FigureDesk::takeIn(const std::vector<Change>& changes) {
    if (alterFigures(changes))
        recompute();
    else
        Q_EMIT sawRowsChanged();
}

StickPlan FigureDesk::planFor(const StickNeed& need) {
    StickQuestion question = stickQuestion(need, m_prices);
    if (const StickPlan* known = m_memory.find(question))
        return *known;
    StickPlan plan = planSticks(need, m_prices, Effort::quick);
    m_open.push_back(std::move(question));
    return plan;
}

void FigureDesk::recompute() {
    endSearch();
    m_open.clear();
    m_prices = pricesFor(m_desk.book(), m_job.plan);
    m_figures = m_job ? figuresFor(m_desk.book(), m_job.plan, m_job.selection,
                    [this](const StickNeed& need) { return planFor(need); })
                      : JobFigures();
    startSearch();
    Q_EMIT figured();
}

void FigureDesk::endSearch() {
    if (m_stop)
        m_stop->store(true);
    m_stop.reset();
    ++m_run;
}

void FigureDesk::stopSearch() {
    if (!m_stop)
        return;
    endSearch();
    Q_EMIT figured();
}

void FigureDesk::resumeSearch() {
    if (m_stop || m_open.empty())
        return;
    startSearch();
    Q_EMIT figured();
}

void FigureDesk::startSearch() {
    if (m_open.empty())
        return;
    m_stop = std::make_shared<std::atomic<bool>>(false);
    QPointer<FigureDesk> self(this);
    QThreadPool::globalInstance()->start(
        [self, stop = m_stop, run = m_run, questions = m_open, prices = m_prices] {
            for (const StickQuestion& question : questions) {
                StickPlan plan = planSticks(
                    question.need, prices, Effort::thorough, [&] { return stop->load(); });
                if (stop->load())
                    return;
                QMetaObject::invokeMethod(
                    qApp,
                    [self, run, question, plan = std::move(plan)] {
                        if (self)
                            self->takePlan(run, question, plan);
                    },
                    Qt::QueuedConnection);
            }
        });
}

void FigureDesk::takePlan(int run, const StickQuestion& question, const StickPlan& plan) {
    if (run != m_run)
        return;
    std::erase(m_open, question);
    if (m_open.empty())
        m_stop.reset();
    m_memory.keep(question, plan);
    std::vector<StickPlan> sticks = m_figures.sticks;
    for (StickPlan& each : sticks) {
        if (each.profile == plan.profile)
            each = plan;
    }
    reprice(m_figures, m_desk.book(), std::move(sticks));
    Q_EMIT figured();
}

} // namespace miterbook
