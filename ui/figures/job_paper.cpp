// SPDX-License-Identifier: GPL-3.0-or-later
#include "figures/job_paper.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "job/price_sheet.h"
#include "papers/paper_list.h"

#include <QCursor>
#include <QGuiApplication>

#include <algorithm>

namespace miterbook {

namespace {

/// The job's plan, the plan a house was started from, which names its elevation and options, and for
/// a paper of a whole set the other plans of the set.
bool openPlans(Desk& desk, const PaperKind& kind, const JobRef& job) {
    const House* house = desk.book().house(job.house);
    if (!desk.openPlan(job.plan) || (house && !desk.openPlan(house->plan)))
        return false;
    if (!kind.ofSet)
        return true;
    const std::vector<Id<Plan>> set = plansOf(desk.book(), desk.book().plan(job.plan)->set);
    return std::ranges::all_of(set, [&](Id<Plan> plan) { return desk.openPlan(plan); });
}

JobFigures thorough(const Book& book, const JobRef& job) {
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    JobFigures figures = figuresFor(book, job.plan, job.selection, Effort::thorough);
    QGuiApplication::restoreOverrideCursor();
    return figures;
}

} // namespace

Result<Paper> jobPaper(
    Desk& desk, const FigureDesk& figures, std::string_view name, const JobRef& job, Date on) {
    const PaperKind* kind = findPaper(name);
    if (!kind)
        return Error{Fault::notFound, "There is no such paper."};
    const Date today = desk.clock().today();
    if (kind->ofShop) {
        const Date date = on == noDate ? today : on;
        if (!desk.openDays(addDays(date, -6), addDays(date, 6)))
            return Error{Fault::storage, "The hours of that week cannot be read."};
        return kind->build({desk.book(), {}, {}, {}, date}, {});
    }
    if (!openPlans(desk, *kind, job))
        return Error{Fault::notFound, "That plan cannot be opened."};
    const PaperJob paper{
        desk.book(), job.plan, job.house, {}, today, job.selection};
    if (figures.job() == job && figures.settled())
        return kind->build(paper, figures.figures());
    return kind->build(paper, thorough(desk.book(), job));
}

} // namespace miterbook
