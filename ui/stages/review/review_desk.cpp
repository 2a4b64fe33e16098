// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/review_desk.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"

namespace miterbook {

ReviewDesk::ReviewDesk(Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures) {
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        const bool worked = touches<TimeEntry, House, SoldWork, SoldTask, Plan, PlanSet, Builder,
            Extra, Backcharge>(changes);
        if (worked)
            m_sightings.reset();
        if (!worked && !touches<LabourRate, Factor, CrewMember, Burden>(changes))
            return;
        forget();
    });
    connect(&figures, &FigureDesk::figured, this, &ReviewDesk::changed);
}

const Book& ReviewDesk::book() const {
    return m_desk.book();
}

const House* ReviewDesk::house() const {
    return book().house(m_figures.job().house);
}

void ReviewDesk::forget() {
    m_results.reset();
    m_rates.reset();
    Q_EMIT changed();
}

const std::vector<HouseResult>& ReviewDesk::results() {
    if (!m_results)
        m_results = finishedResults(book());
    return *m_results;
}

const std::vector<TaskRate>& ReviewDesk::rates() {
    if (!m_sightings)
        m_sightings = allSightings(book(), m_desk.soldTasks());
    if (!m_rates)
        m_rates = taskRates(book(), *m_sightings);
    return *m_rates;
}

bool ReviewDesk::accept(const TaskRate& rate) {
    return m_desk.perform(acceptRateEdit(book(), rate));
}

} // namespace miterbook
