// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/house_review.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// The burdened hour of the bid; the book's of today where it has no labour.
Money crewRateOf(const std::vector<WorkBid>& bids, const Book& book) {
    const Money rate = crewRateIn(bids);
    return rate > Money() ? rate : book.prices.crewRate();
}

/// What came to a house besides its bid.
struct BesidesBid {
    Money extras;
    Money extrasMaterial;
    Money backcharges;
};

std::map<Id<House>, BesidesBid> besidesBids(const Book& book) {
    std::map<Id<House>, BesidesBid> besides;
    for (const auto& [id, extra] : book.jobs.of<Extra>()) {
        if (!isAgreed(extra))
            continue;
        besides[extra.house].extras += extra.price;
        besides[extra.house].extrasMaterial += extra.material;
    }
    for (const auto& [id, backcharge] : book.jobs.of<Backcharge>()) {
        if (backcharge.state == BackchargeState::accepted)
            besides[backcharge.house].backcharges += backcharge.amount;
    }
    return besides;
}

HouseResult resultFrom(
    const Book& book, const House& house, std::vector<WorkBid> bids, const BesidesBid& besides) {
    HouseFacts facts;
    facts.extras = besides.extras;
    facts.extrasMaterial = besides.extrasMaterial;
    facts.backcharges = besides.backcharges;
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
    return resultFrom(book, house, book.soldBid(house.work), besidesBids(book)[house.id]);
}

std::vector<HouseResult> finishedResults(const Book& book) {
    std::map<Id<Plan>, std::vector<WorkBid>> bids; // once over all rows, not once for each house
    for (const auto& [id, sold] : book.jobs.of<SoldWork>())
        bids[sold.plan].push_back(workBid(sold));
    auto besides = besidesBids(book);
    std::vector<HouseResult> results;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        const auto bid = bids.find(house.work);
        if (isFinished(house) && bid != bids.end())
            results.push_back(resultFrom(book, house, bid->second, besides[id]));
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
