// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/house_progress.h"

#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace miterbook {

namespace {

/// Below this share done, how the work has gone says little about how it will go.
constexpr Percent tellingShare = Percent::whole(10);

WorkProgress& progressOf(std::vector<WorkProgress>& works, PieceOfWork work) {
    const auto found = std::ranges::find(works, work, &WorkProgress::work);
    if (found != works.end())
        return *found;
    works.emplace_back().work = work;
    return works.back();
}

/// Units of an entry that bring its piece of work nearer to its end.
Quantity finished(const TimeEntry& entry) {
    const bool counts = entry.kind == TimeKind::work
        && (entry.task == Task::other || countsAsDone(entry.task));
    return counts && doneUnit(entry) == doneUnit(entry.work) ? entry.done : Quantity();
}

/// Takes a share where it is known better than the one that is there.
void takeShare(WorkProgress& work, Percent done, DoneBy by) {
    if (by <= work.by)
        return;
    work.done = std::clamp(done, Percent(), Percent::hundred());
    work.by = by;
}

void takeShares(WorkProgress& work, const std::vector<DoneSaid>& said) {
    for (const DoneSaid& each : said) {
        if (each.work == work.work)
            takeShare(work, each.done, each.by);
    }
    if (work.unitsBid > Quantity() && work.unitsDone > Quantity()) {
        const auto share = roundedQuotient(
            Wide(work.unitsDone.thousandths()) * 10'000, work.unitsBid.thousandths());
        takeShare(work, Percent::basisPoints(share), DoneBy::units);
    }
}

double minutesOf(Hours hours) {
    return static_cast<double>(hours.minutes());
}

Hours forecastOf(const WorkProgress& work) {
    if (work.by == DoneBy::unknown || work.bid == Hours())
        return std::max(work.bid, work.used);
    if (work.done == Percent::hundred())
        return work.used;
    const EarnedValue value{
        minutesOf(work.bid), minutesOf(work.bid) * work.done.fraction(), minutesOf(work.used)};
    // Units finished before any time was written down say nothing of the pace.
    const bool telling = work.done >= tellingShare && work.used > Hours();
    const auto total = value.atCompletion(telling ? Forecast::asSoFar : Forecast::asBid);
    return Hours::minutes(std::llround(*total));
}

/// Work on extras stands in its own line: it was not bid, and the builder pays for it.
void sumUp(HouseProgress& house) {
    double earned = 0;
    house.bid = Hours();
    house.used = house.lost;
    house.forecast = house.lost;
    for (const WorkProgress& work : house.works) {
        if (work.work == PieceOfWork::extras)
            continue;
        house.bid += work.bid;
        house.used += work.used;
        house.forecast += work.forecast;
        earned += minutesOf(work.bid) * work.done.fraction();
    }
    if (house.bid > Hours())
        house.done = Percent::basisPoints(std::llround(earned / minutesOf(house.bid) * 10'000));
}

void noteSurplus(const WorkProgress& work, std::vector<std::string>& notes) {
    if (work.unitsBid > Quantity() && work.unitsDone > work.unitsBid) {
        notes.push_back(capitalised(word(work.work)) + ": " + formatQuantity(work.unitsDone)
            + " finished, but " + formatQuantity(work.unitsBid) + " were bid.");
    }
}

} // namespace

Money HouseProgress::profitLost(Money crewRate) const {
    return Money::cents(roundedQuotient(Wide((forecast - bid).minutes()) * crewRate.cents(), 60));
}

HouseProgress houseProgress(const std::vector<WorkBid>& bids, const std::vector<TimeEntry>& entries,
    const std::vector<DoneSaid>& said) {
    HouseProgress house;
    for (const WorkBid& bid : bids) {
        WorkProgress& work = progressOf(house.works, bid.work);
        work.bid += bid.hours;
        work.unitsBid += bid.units;
    }
    for (const TimeEntry& entry : entries) {
        const auto against = bidWorkOf(entry);
        if (!against) {
            house.lost += entry.time;
            continue;
        }
        WorkProgress& work = progressOf(house.works, *against);
        work.used += entry.time;
        work.unitsDone += finished(entry);
    }
    for (WorkProgress& work : house.works) {
        takeShares(work, said);
        work.forecast = forecastOf(work);
        noteSurplus(work, house.notes);
    }
    sumUp(house);
    return house;
}

void finishProgress(HouseProgress& house) {
    for (WorkProgress& work : house.works) {
        takeShare(work, Percent::hundred(), DoneBy::finished);
        work.forecast = work.used;
    }
    sumUp(house);
    house.done = Percent::hundred();
}

void troubleFirst(std::vector<HouseTrouble>& houses) {
    std::ranges::sort(houses, [](const HouseTrouble& a, const HouseTrouble& b) {
        return std::tuple(b.profitLost, a.house) < std::tuple(a.profitLost, b.house);
    });
}

} // namespace miterbook
