// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/comparison.h"

#include "basics/amount_text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

std::int64_t keyOf(const HouseResult& house, CompareBy by) {
    switch (by) {
    case CompareBy::plan:
        return house.plan.value();
    case CompareBy::builder:
        return house.builder.value();
    default:
        return house.finished.ok() ? static_cast<int>(house.finished.year()) : 0;
    }
}

/// One group while its houses are added up.
struct Gathering {
    GroupResult result;
    std::vector<double> overruns; ///< of houses with bid hours
    Hours openingHours;
    double openings = 0;
    Hours baseHours;
    double baseFeet = 0;
    int callbacks = 0;

    void add(const HouseResult& house) {
        ++result.houses;
        result.bid += house.bid;
        result.used += house.used;
        result.price += house.price;
        result.cost += house.cost;
        callbacks += house.callbacks;
        if (house.bid > Hours())
            overruns.push_back(house.used.toDouble() / house.bid.toDouble() - 1);
        for (const PieceOfWork work : {PieceOfWork::doors, PieceOfWork::windows}) {
            if (const WorkResult* found = house.of(work)) {
                openingHours += found->used;
                openings += found->units.toDouble();
            }
        }
        if (const WorkResult* base = house.of(PieceOfWork::base)) {
            baseHours += base->used;
            baseFeet += base->units.toDouble();
        }
    }
    void finish() {
        if (openings > 0)
            result.hoursPerOpening = openingHours.toDouble() / openings;
        if (baseFeet > 0)
            result.hoursPer100Base = baseHours.toDouble() * 100 / baseFeet;
        if (overruns.empty())
            return;
        for (const double each : overruns)
            result.overrun += each / static_cast<double>(overruns.size());
        if (overruns.size() > 1)
            result.overrunSpread = std::sqrt(squares() / static_cast<double>(overruns.size() - 1));
    }
    double squares() const {
        double sum = 0;
        for (const double each : overruns)
            sum += (each - result.overrun) * (each - result.overrun);
        return sum;
    }
};

using Gatherings = std::map<std::int64_t, Gathering>;

/// Variance of houses about their groups; a tenth squared where no group has two of them.
double varianceWithin(const Gatherings& groups) {
    constexpr double usual = 0.01;
    double squares = 0;
    double freedom = 0;
    for (const auto& [key, group] : groups) {
        squares += group.squares();
        freedom += group.overruns.empty() ? 0 : static_cast<double>(group.overruns.size() - 1);
    }
    return freedom > 0 && squares > 0 ? squares / freedom : usual;
}

void expectOverruns(Gatherings& groups) {
    const double within = varianceWithin(groups);
    std::vector<GroupMean> means;
    std::vector<GroupResult*> results;
    for (auto& [key, group] : groups) {
        if (group.overruns.empty())
            continue;
        means.push_back(
            {group.result.overrun, within / static_cast<double>(group.overruns.size())});
        results.push_back(&group.result);
    }
    const auto shrunk = shrink(means, poolDerSimonianLaird(means));
    for (std::size_t i = 0; i < shrunk.size(); ++i)
        results[i]->expected = shrunk[i];
}

void expectCallbacks(Gatherings& groups) {
    double days = 0;
    double houses = 0;
    for (const auto& [key, group] : groups) {
        days += group.callbacks;
        houses += group.result.houses;
    }
    for (auto& [key, group] : groups)
        group.result.callbacks = gammaPoissonRate(
            group.callbacks, group.result.houses, days / houses, 1);
}

} // namespace

Money GroupResult::profitPerHouse() const {
    return houses == 0 ? Money() : Money::cents(roundedQuotient(profit().cents(), houses));
}

Money GroupResult::profitPerHour() const {
    if (used <= Hours())
        return {};
    return Money::cents(roundedQuotient(Wide(profit().cents()) * 60, used.minutes()));
}

double GroupResult::hoursPer100(LengthUnit written) const {
    return hoursPer100Base * runOne(written).toFeet();
}

std::vector<GroupResult> compareHouses(const std::vector<HouseResult>& houses, CompareBy by) {
    Gatherings groups;
    for (const HouseResult& house : houses)
        groups[keyOf(house, by)].add(house);
    for (auto& [key, group] : groups) {
        group.result.key = key;
        group.finish();
    }
    expectOverruns(groups);
    expectCallbacks(groups);
    std::vector<GroupResult> results;
    for (const auto& [key, group] : groups)
        results.push_back(group.result);
    std::ranges::stable_sort(results, {}, [](const GroupResult& g) { return -g.profitPerHour(); });
    return results;
}

Money Loss::perHouse() const {
    return houses == 0 ? Money() : Money::cents(roundedQuotient(lost.cents(), houses));
}

std::vector<Loss> losses(const std::vector<HouseResult>& houses) {
    std::map<std::pair<Id<Plan>, PieceOfWork>, Loss> all;
    for (const HouseResult& house : houses) {
        for (const WorkResult& work : house.works) {
            Loss& loss = all[{house.plan, work.work}];
            ++loss.houses;
            loss.lost -= work.profit();
            loss.over += work.used - work.bid;
        }
    }
    std::vector<Loss> list;
    for (auto& [key, loss] : all) {
        std::tie(loss.plan, loss.work) = key;
        if (loss.lost > Money())
            list.push_back(loss);
    }
    std::ranges::stable_sort(list, {}, [](const Loss& loss) { return -loss.lost; });
    return list;
}

} // namespace miterbook
