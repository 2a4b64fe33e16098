// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/house_result.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

Money atRate(Hours hours, Money rate) {
    return Money::cents(roundedQuotient(Wide(hours.minutes()) * rate.cents(), 60));
}

int callbackDays(const std::vector<TimeEntry>& entries) {
    std::set<Date> days;
    for (const TimeEntry& entry : entries) {
        if (entry.kind == TimeKind::callback)
            days.insert(entry.date);
    }
    return static_cast<int>(days.size());
}

/// The pieces of work with what was bid; extras bring what was agreed later.
std::map<PieceOfWork, WorkResult> bidWorks(const HouseFacts& facts) {
    std::map<PieceOfWork, WorkResult> works;
    for (const WorkBid& bid : facts.bids) {
        WorkResult& work = works[bid.work];
        work.bid += bid.hours;
        work.units += bid.units;
        work.price += bid.price;
        work.bidPrice += bid.price;
        work.bidCost += bid.cost;
        work.cost += bid.cost - bid.labour;
    }
    if (facts.extras != Money() || facts.extrasMaterial != Money()) {
        WorkResult& extras = works[PieceOfWork::extras];
        extras.price += facts.extras;
        extras.cost += facts.extrasMaterial;
    }
    return works;
}

} // namespace

Money HouseResult::profitPerHour() const {
    if (used <= Hours())
        return {};
    return Money::cents(roundedQuotient(Wide(profit().cents()) * 60, used.minutes()));
}

const WorkResult* HouseResult::of(PieceOfWork work) const {
    const auto found = std::ranges::find(works, work, &WorkResult::work);
    return found == works.end() ? nullptr : &*found;
}

HouseResult houseResult(const HouseFacts& facts) {
    HouseResult result;
    result.house = facts.house;
    result.plan = facts.plan;
    result.builder = facts.builder;
    result.finished = facts.finished;
    auto works = bidWorks(facts);
    for (const TimeEntry& entry : facts.entries) {
        if (const auto against = bidWorkOf(entry))
            works[*against].used += entry.time;
        else
            result.lost += entry.time;
    }
    result.used = result.lost;
    result.cost = atRate(result.lost, facts.crewRate) + facts.backcharges + facts.materialOver;
    result.callbacks = callbackDays(facts.entries);
    for (auto& [kind, work] : works) {
        work.work = kind;
        work.cost += atRate(work.used, facts.crewRate);
        result.bid += work.bid;
        result.used += work.used;
        result.price += work.price;
        result.cost += work.cost;
        result.bidProfit += work.bidProfit();
        result.works.push_back(work);
    }
    return result;
}

} // namespace miterbook
