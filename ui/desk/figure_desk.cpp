// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/figure_desk.h"

#include "desk/desk.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace miterbook {

FigureDesk::FigureDesk(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, [this] { recompute(); });
}

FigureDesk::~FigureDesk() {
    stopSearch();
}

void FigureDesk::setJob(const JobRef& job) {
    if (job.plan && !m_desk.openPlan(job.plan))
        return;
    m_job = job;
    recompute();
}

void FigureDesk::recompute() {
    stopSearch();
    m_figures = m_job ? figuresFor(m_desk.book(), m_job.plan, m_job.selection, Effort::quick)
                      : JobFigures();
    m_settled = !m_job;
    Q_EMIT figured();
    if (m_job)
        startSearch();
}

void FigureDesk::stopSearch() {
    if (m_stop)
        m_stop->store(true);
    m_stop.reset();
    ++m_run;
    m_settled = true;
}

void FigureDesk::startSearch() {
    m_settled = false;
    m_stop = std::make_shared<std::atomic<bool>>(false);
    QPointer<FigureDesk> self(this);
    QThreadPool::globalInstance()->start(
        [self, stop = m_stop, run = m_run, needs = stickNeeds(m_figures.takeoff),
            prices = m_desk.book().prices] {
            auto sticks = planAllSticks(needs, prices, Effort::thorough, [&] { return stop->load(); });
            if (stop->load())
                return;
            QMetaObject::invokeMethod(
                qApp,
                [self, run, sticks = std::move(sticks)] {
                    if (self)
                        self->takeSticks(run, sticks);
                },
                Qt::QueuedConnection);
        });
}

void FigureDesk::takeSticks(int run, const std::vector<StickPlan>& sticks) {
    if (run != m_run)
        return;
    m_settled = true;
    m_stop.reset();
    reprice(m_figures, m_desk.book(), sticks);
    Q_EMIT figured();
}

} // namespace miterbook
