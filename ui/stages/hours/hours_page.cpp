// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/hours_page.h"

#include "desk/desk.h"
#include "stages/hours/entries_tab.h"
#include "stages/hours/pay_tab.h"
#include "stages/hours/progress_tab.h"
#include "stages/hours/timer_bar.h"
#include "stages/hours/week_desk.h"
#include "stages/hours/week_tab.h"

#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

HoursPage::HoursPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_week(new WeekDesk(desk, figures, this))
    , m_timer(new TimerBar(*m_week))
    , m_grid(new WeekTab(*m_week))
    , m_entries(new EntriesTab(*m_week))
    , m_progress(new ProgressTab(*m_week, figures))
    , m_pay(new PayTab(*m_week))
    , m_tabs(new QTabWidget) {
    setAccessibleName(tr("Hours"));
    m_tabs->addTab(m_grid, tr("Week"));
    m_tabs->addTab(m_progress, tr("Against the bid"));
    m_tabs->addTab(m_entries, tr("Entries"));
    m_tabs->addTab(m_pay, tr("Pay"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_timer);
    layout->addWidget(m_tabs, 1);
}

QString HoursPage::nextStep() const {
    if (m_week->book().prices.of<CrewMember>().empty())
        return tr("say in the book who works in the crew");
    if (m_week->entries().empty())
        return tr("type this week's hours, or bring them in");
    if (!m_week->isApproved() && m_week->today() > m_week->last())
        return tr("look the week over and approve it");
    const HouseProgress& progress = m_progress->progress();
    for (const WorkProgress& work : progress.works) {
        if (work.used > Hours() && work.over() && work.by != DoneBy::finished)
            return tr("look at %1: more hours than bid")
                .arg(QString::fromUtf8(word(work.work).data(), qsizetype(word(work.work).size())));
    }
    return {};
}

} // namespace miterbook
