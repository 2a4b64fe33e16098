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
    slice.sheets[id] = book.sheet(id);
    return slice;
}

/// The plan that a changed row belongs to; none for the price book's and for houses.
Id<Plan> planOf(const AnyRow& row) {
    return std::visit(
        [](const auto& each) -> Id<Plan> {
            using Row = std::remove_cvref_t<decltype(each)>;
            if constexpr (std::is_same_v<Row, Plan>)
                return each.id;
            else if constexpr (belowPlan<Row> || hangsOnPlan<Row>)
                return each.plan;
            else
                return {};
        },
        row);
}

bool isPrice(const AnyRow& row) {
    return std::visit(
        [](const auto& each) {
            using Row = std::remove_cvref_t<decltype(each)>;
            return PriceTables::holds<Row> && !std::is_same_v<Row, Builder>;
        },
        row);
}

} // namespace

HouseFigures::HouseFigures(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, &HouseFigures::forget);
}

std::optional<HouseFigure> HouseFigures::find(Id<Plan> work) const {
    const auto it = m_known.find(work);
    return it == m_known.end() ? std::nullopt : std::optional(it->second);
}

void HouseFigures::want(const std::vector<Id<Plan>>& works) {
    m_wanted.clear();
    for (const Id<Plan> work : works) {
        if (!m_known.contains(work))
            m_wanted.push_back(work);
    }
    next();
}

void HouseFigures::forget(const Changes& changes) {
    ++m_age;
    for (const Change& change : changes) {
        if (isPrice(change.row()))
            m_known.clear();
        else
            m_known.erase(planOf(change.row()));
    }
}

void HouseFigures::next() {
    if (m_busy || m_wanted.empty())
        return;
    const Id<Plan> work = m_wanted.front();
    m_wanted.pop_front();
    if (!m_desk.book().plan(work) || !m_desk.openPlan(work))
        return;
    m_busy = true;
    QPointer<HouseFigures> self(this);
    QThreadPool::globalInstance()->start(
        [self, work, age = m_age, book = sliceOf(m_desk.book(), work)] {
            const JobFigures figures = figuresFor(book, work, {}, Effort::quick);
            const HouseFigure figure{figures.estimate.total.price, figures.estimate.total.hours};
            QMetaObject::invokeMethod(
                qApp,
                [self, work, age, figure] {
                    if (self)
                        self->take(work, age, figure);
                },
                Qt::QueuedConnection);
        });
}

void HouseFigures::take(Id<Plan> work, int age, HouseFigure figure) {
    m_busy = false;
    if (age == m_age) {
        m_known[work] = figure;
        Q_EMIT figured();
    } else {
        m_wanted.push_front(work);
    }
    next();
}

} // namespace miterbook
