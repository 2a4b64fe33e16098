// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/house_figures.h"

#include "hours/house_progress.h"
#include "job/any_row.h"
#include "job/figures.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

#include <algorithm>

namespace miterbook {

namespace {

/// What the figures of one plan are computed from, apart from the book that goes on changing.
Book sliceOf(const Book& book, Id<Plan> id) {
    Book slice;
    slice.prices = book.prices;
    if (const Plan* plan = book.plan(id))
        slice.jobs.of<Plan>().put(*plan);
    forEachOfPlan(book, id, [&]<class Row>(const Row& row) { slice.jobs.of<Row>().put(row); });
    slice.sheets[id] = book.sheet(id);
    return slice;
}

/// Whether a row is of the price book, other than builders.
bool isPrice(const AnyRow& row) {
    static constexpr auto prices = BookRows::mapped([]<class Row>(RowKind<Row>) {
        return PriceTables::holds<Row> && !std::is_same_v<Row, Builder>;
    });
    return prices[row.kind()];
}

/// The burdened hour that a bid was reckoned with.
Money rateIn(const std::vector<WorkBid>& works) {
    Money labour;
    Hours hours;
    for (const WorkBid& work : works) {
        labour += work.labour;
        hours += work.hours;
    }
    return hours > Hours()
        ? Money::cents(roundedQuotient(Wide(labour.cents()) * 60, hours.minutes()))
        : Money();
}

HouseFigure figureOf(const HouseBid& bid, const std::vector<TimeEntry>& entries, bool finished) {
    HouseFigure figure;
    for (const WorkBid& work : bid.works) {
        figure.price += work.price;
        figure.hours += work.hours;
    }
    const HouseProgress progress = houseProgress(bid.works, entries);
    figure.over = (finished ? progress.used : progress.forecast) - progress.bid;
    figure.done = finished ? Percent::hundred() : progress.done;
    figure.toProfit = Money::cents(
        -roundedQuotient(Wide(figure.over.minutes()) * bid.crewRate.cents(), 60));
    return figure;
}

} // namespace

HouseFigures::HouseFigures(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, &HouseFigures::forget);
    readSold();
}

void HouseFigures::readSold() {
    m_sold.clear();
    for (const auto& [id, sold] : m_desk.book().jobs.of<SoldWork>())
        m_sold[sold.plan].works.push_back(workBid(sold));
    for (auto& [plan, bid] : m_sold)
        bid.crewRate = rateIn(bid.works);
}

std::optional<HouseFigure> HouseFigures::find(const House& house) {
    if (const auto shown = m_shown.find(house.id); shown != m_shown.end())
        return shown->second;
    const auto sold = m_sold.find(house.work);
    const auto known = m_known.find(house.work);
    if (sold == m_sold.end() && known == m_known.end())
        return std::nullopt;
    const HouseBid& bid = sold == m_sold.end() ? known->second : sold->second;
    const HouseFigure figure = figureOf(
        bid, m_desk.book().time.summedEntries(house.id), isFinished(house));
    m_shown[house.id] = figure;
    return figure;
}

void HouseFigures::want(const std::vector<Id<Plan>>& works) {
    m_wanted.clear();
    for (const Id<Plan> work : works) {
        if (!m_known.contains(work) && !m_sold.contains(work))
            m_wanted.push_back(work);
    }
    next();
}

void HouseFigures::forget(const Changes& changes) {
    ++m_age;
    bool sold = false;
    for (const Change& change : changes) {
        for (const auto* side : {&change.before, &change.after}) {
            if (*side)
                forgetShown(**side);
        }
        sold = sold || change.row().is<SoldWork>();
        if (isPrice(change.row()))
            m_known.clear();
        else
            m_known.erase(planOf(change.row()));
    }
    if (sold)
        readSold();
}

void HouseFigures::forgetShown(const AnyRow& row) {
    if (const auto* entry = row.as<TimeEntry>())
        m_shown.erase(entry->house);
    else if (!row.isAnyOf<Timer, WeekApproval>())
        m_shown.clear(); // made again in no time from what is in memory
}

/// The next plan that can be opened; nothing when none is left.
std::optional<Id<Plan>> HouseFigures::takeWanted() {
    while (!m_wanted.empty()) {
        const Id<Plan> work = m_wanted.front();
        m_wanted.pop_front();
        if (m_desk.book().plan(work) && m_desk.openPlan(work))
            return work;
    }
    return std::nullopt;
}

void HouseFigures::next() {
    const auto wanted = m_busy ? std::nullopt : takeWanted();
    if (!wanted)
        return;
    const Id<Plan> work = *wanted;
    m_busy = true;
    QPointer<HouseFigures> self(this);
    QThreadPool::globalInstance()->start(
        [self, work, age = m_age, book = sliceOf(m_desk.book(), work)] {
            const JobFigures figures = figuresFor(book, work, {}, Effort::quick);
            const HouseBid bid{workBids(figures.estimate), figures.estimate.crewRate};
            QMetaObject::invokeMethod(
                qApp,
                [self, work, age, bid] {
                    if (self)
                        self->take(work, age, bid);
                },
                Qt::QueuedConnection);
        });
}

void HouseFigures::take(Id<Plan> work, int age, HouseBid bid) {
    m_busy = false;
    if (age == m_age) {
        m_known[work] = std::move(bid);
        Q_EMIT figured();
    } else {
        m_wanted.push_front(work);
    }
    next();
}

} // namespace miterbook
