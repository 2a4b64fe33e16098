// SPDX-License-Identifier: GPL-3.0-or-later
#include "figures/job_paper.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "job/price_sheet.h"
#include "papers/paper_list.h"
#include "widgets/long_work.h"

#include <QObject>

#include <algorithm>
#include <optional>

namespace miterbook {

namespace {

/// The job's plan, the plan a house was started from, which names its elevation and options, and
/// for a paper of a whole set the other plans of the set.
bool openPlans(Desk& desk, const PaperKind& kind, const JobRef& job) {
    const House* house = desk.book().house(job.house);
    if (!desk.openPlan(job.plan) || (house && !desk.openPlan(house->plan)))
        return false;
    if (!kind.ofSet)
        return true;
    const std::vector<Id<Plan>> set = plansOf(desk.book(), desk.book().plan(job.plan)->set);
    return std::ranges::all_of(set, [&](Id<Plan> plan) { return desk.openPlan(plan); });
}

} // namespace

Result<Paper> jobPaper(Desk& desk, const FigureDesk& figures, std::string_view name,
    const JobRef& job, Date on, QWidget* parent) {
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
    const Book book = desk.book(); // the work goes on beside the window
    const auto settled = settledFigures(figures, job);
    const bool reckonsMore = kind->ofSet || (kind->build == bidPaper && !job.house);
    if (settled && !reckonsMore)
        return kind->build({book, job.plan, job.house, {}, today, job.selection}, *settled);
    std::optional<Paper> made;
    const bool whole = runLong(parent, QObject::tr("Reckoning the paper"), [&](LongWork& work) {
        const auto stop = [&work] { return work.stopped(); };
        const auto step = [&work](int done, int all) { work.setStep(done, all); };
        const PaperJob paper{book, job.plan, job.house, {}, today, job.selection, stop, step};
        made = kind->build(paper,
            settled ? *settled : figuresFor(book, job.plan, job.selection, Effort::thorough, stop));
    });
    if (!whole || !made)
        return Error{Fault::cancelled, "The paper was not made: it was stopped."};
    return *std::move(made);
}

std::optional<JobFigures> settledFigures(const FigureDesk& figures, const JobRef& job) {
    if (figures.job() == job && figures.settled() && figures.unsettled() == 0)
        return figures.figures();
    return std::nullopt;
}

} // namespace miterbook
