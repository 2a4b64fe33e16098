// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/what_if_search.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace miterbook {

WhatIfSearch::WhatIfSearch(QObject* parent)
    : QObject(parent) {
}

WhatIfSearch::~WhatIfSearch() {
    stop();
}

void WhatIfSearch::ask(const JobFigures& figures, const PriceBook& prices, const WhatIf& whatIf) {
    stop();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    QPointer<WhatIfSearch> self(this);
    OrderNow now{stickNeeds(figures.takeoff), figures.sticks};
    QThreadPool::globalInstance()->start(
        [self, stop = m_stop, run = m_run, prices, whatIf, whole = figures.whole,
            trips = figures.setup.trips, now = std::move(now)] {
            const Takeoff then = takeOff(whole, pricesIf(prices, whatIf), trips);
            const auto plans = plansIf(
                stickNeeds(then), prices, whatIf, now, [&] { return stop->load(); });
            if (stop->load())
                return;
            QMetaObject::invokeMethod(
                qApp,
                [self, run, plans] {
                    if (self)
                        self->take(run, plans);
                },
                Qt::QueuedConnection);
        });
}

void WhatIfSearch::stop() {
    if (m_stop)
        m_stop->store(true);
    m_stop.reset();
    ++m_run;
}

void WhatIfSearch::take(int run, const Result<std::vector<StickPlan>>& plans) {
    if (run != m_run)
        return;
    m_stop.reset();
    Q_EMIT answered(plans);
}

} // namespace miterbook
