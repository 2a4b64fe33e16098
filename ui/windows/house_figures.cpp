// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/house_figures.h"

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
    for (const auto& [benchId, bench] : book.jobs.of<Bench>())
        slice.jobs.of<Bench>().put(bench);
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

HouseFigure figureOf(
    const Book& book, const House& house, const HouseBid& bid, const std::vector<DoneSaid>& hung) {
    HouseFigure figure;
    for (const WorkBid& work : bid.works) {
        figure.price += work.price;
        figure.hours += work.hours;
    }
    const HouseProgress progress = houseForecast(book, house, bid, hung);
    figure.over = progress.forecast - progress.bid;
    figure.done = progress.done;
    figure.toProfit = -progress.profitLost(bid.crewRate);
    return figure;
}

bool anythingHung(const Book& book, Id<Plan> work) {
    return std::ranges::any_of(book.sheet(work).of<CutPiece>(),
        [](const auto& entry) { return entry.second.state == PieceState::hung; });
}

} // namespace

HouseFigures::HouseFigures(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, &HouseFigures::forget);
    readSold();
}

void HouseFigures::readSold() {
    std::map<Id<Plan>, std::vector<WorkBid>> works;
    for (const auto& [id, sold] : m_desk.book().jobs.of<SoldWork>())
        works[sold.plan].push_back(workBid(sold));
    m_sold.clear();
    for (auto& [plan, bids] : works)
        m_sold.emplace(plan, wonBid(std::move(bids)));
}

std::optional<HouseFigure> HouseFigures::find(const House& house) {
    if (const auto shown = m_shown.find(house.id); shown != m_shown.end())
        return shown->second;
    const auto sold = m_sold.find(house.work);
    const auto known = m_known.find(house.work);
    if (sold == m_sold.end() && known == m_known.end())
        return std::nullopt;
    const HouseBid& bid = sold == m_sold.end() ? known->second.bid : sold->second;
    const auto hung = known == m_known.end() ? std::vector<DoneSaid>() : known->second.hung;
    const HouseFigure figure = figureOf(m_desk.book(), house, bid, hung);
    m_shown[house.id] = figure;
    return figure;
}

void HouseFigures::want(const std::vector<Id<Plan>>& works) {
    m_wanted.clear();
    for (const Id<Plan> work : works) {
        if (!m_known.contains(work) && isWorthReading(work))
            m_wanted.push_back(work);
    }
    next();
}

/// Of a bid that was won only what is hung is not in memory, and of a finished house that no longer
/// matters.
bool HouseFigures::isWorthReading(Id<Plan> work) const {
    const Plan* plan = m_desk.book().plan(work);
    const House* house = plan ? m_desk.book().house(plan->house) : nullptr;
    return !m_sold.contains(work) || (house && !isFinished(*house));
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

/// The next plan that can be opened and has to be reckoned; nothing when none is left.
std::optional<Id<Plan>> HouseFigures::takeWanted() {
    while (!m_wanted.empty()) {
        const Id<Plan> work = m_wanted.front();
        m_wanted.pop_front();
        if (!m_desk.book().plan(work) || !m_desk.openPlan(work))
            continue;
        if (!m_sold.contains(work) || anythingHung(m_desk.book(), work))
            return work;
        m_known[work] = {};
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
            const Reckoned reckoned{houseBid(book, figures), hungShares(book, figures)};
            QMetaObject::invokeMethod(
                qApp,
                [self, work, age, reckoned] {
                    if (self)
                        self->take(work, age, reckoned);
                },
                Qt::QueuedConnection);
        });
}

void HouseFigures::take(Id<Plan> work, int age, Reckoned reckoned) {
    m_busy = false;
    if (age == m_age) {
        m_known[work] = std::move(reckoned);
        m_shown.clear();
        Q_EMIT figured();
    } else {
        m_wanted.push_front(work);
    }
    next();
}

} // namespace miterbook
