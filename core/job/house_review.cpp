// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/house_review.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// The burdened hour that a bid was reckoned with; the book's of today where it has no labour.
Money crewRateOf(const std::vector<WorkBid>& bids, const Book& book) {
    Money labour;
    Hours hours;
    for (const WorkBid& bid : bids) {
        labour += bid.labour;
        hours += bid.hours;
    }
    if (hours <= Hours() || labour <= Money())
        return book.prices.crewRate();
    return Money::cents(roundedQuotient(Wide(labour.cents()) * 60, hours.minutes()));
}

HouseResult resultFrom(const Book& book, const House& house, std::vector<WorkBid> bids) {
    HouseFacts facts;
    facts.house = house.id;
    facts.plan = house.plan;
    if (const Plan* plan = book.plan(house.plan)) {
        if (const Builder* builder = book.builderOf(*plan))
            facts.builder = builder->id;
    }
    facts.finished = house.finished;
    facts.crewRate = crewRateOf(bids, book);
    facts.bids = std::move(bids);
    facts.entries = book.time.summedEntries(house.id);
    return houseResult(facts);
}

} // namespace

HouseResult resultOf(const Book& book, const House& house) {
    return resultFrom(book, house, book.soldBid(house.work));
}

std::vector<HouseResult> finishedResults(const Book& book) {
    std::map<Id<Plan>, std::vector<WorkBid>> bids; // once over all rows, not once for each house
    for (const auto& [id, sold] : book.jobs.of<SoldWork>())
        bids[sold.plan].push_back(workBid(sold));
    std::vector<HouseResult> results;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        const auto bid = bids.find(house.work);
        if (isFinished(house) && bid != bids.end())
            results.push_back(resultFrom(book, house, bid->second));
    }
    std::ranges::sort(results, {},
        [](const HouseResult& result) { return std::tuple(result.finished, result.house); });
    return results;
}

std::string groupName(const Book& book, CompareBy by, std::int64_t key) {
    if (key == 0)
        return "none";
    if (by == CompareBy::year)
        return std::to_string(key);
    if (by == CompareBy::plan) {
        const Plan* plan = book.plan(Id<Plan>(key));
        return plan ? plan->name : "none";
    }
    const Builder* builder = book.prices.of<Builder>().find(Id<Builder>(key));
    return builder ? builder->name : "none";
}

} // namespace miterbook
