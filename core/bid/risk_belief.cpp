// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/risk.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace miterbook {

namespace {

struct Sight {
    std::int64_t house;
    std::size_t work;
    double log;
};

std::vector<Sight> sightsOf(const std::vector<FinishedWork>& finished) {
    std::vector<Sight> sights;
    for (const FinishedWork& each : finished) {
        if (each.bid <= Hours() || each.used <= Hours())
            continue;
        const double log = std::log(
            static_cast<double>(each.used.minutes()) / static_cast<double>(each.bid.minutes()));
        sights.push_back({each.house, static_cast<std::size_t>(each.work),
            std::clamp(log, -RiskBelief::furthest, RiskBelief::furthest)});
    }
    return sights;
}

/// Sums of logs by key, for means.
struct Sum {
    double total = 0;
    int count = 0;

    void add(double value) {
        total += value;
        ++count;
    }
    double mean() const { return count == 0 ? 0 : total / count; }
};

/// The logs taken apart into works' means, houses' means about these, and rests.
struct Parts {
    std::array<Sum, workCount> works;
    std::map<std::int64_t, Sum> houses;      ///< of log - the work's mean
    std::array<double, workCount> squares{}; ///< of the rests, by work
    double rest = 0;                         ///< sum of all squares

    explicit Parts(const std::vector<Sight>& sights) {
        for (const Sight& sight : sights)
            works[sight.work].add(sight.log);
        for (const Sight& sight : sights)
            houses[sight.house].add(sight.log - works[sight.work].mean());
        for (const Sight& sight : sights) {
            const double about = sight.log - works[sight.work].mean() - houses[sight.house].mean();
            squares[sight.work] += about * about;
            rest += about * about;
        }
    }
    int workKinds() const {
        return static_cast<int>(
            std::ranges::count_if(works, [](const Sum& sum) { return sum.count > 0; }));
    }
};

constexpr double square(double value) {
    return value * value;
}

/// A variance that `degrees` of freedom say, drawn towards the starter's.
double drawn(double squares, double degrees, double starterSpread) {
    return (RiskBelief::starterWeight * square(starterSpread) + squares)
        / (RiskBelief::starterWeight + degrees);
}

/// Between houses: mean square of the houses' means less what the rests put into it.
double betweenHouses(const Parts& parts, double restVariance) {
    const double houses = static_cast<double>(parts.houses.size());
    if (houses < 2)
        return drawn(0, 0, RiskBelief::starterHouseSpread);
    double squares = 0;
    for (const auto& [house, sum] : parts.houses)
        squares += std::max(square(sum.mean()) - restVariance / sum.count, 0.0);
    return drawn(squares, houses - 1, RiskBelief::starterHouseSpread);
}

} // namespace

RiskBelief riskBelief(const std::vector<FinishedWork>& finished) {
    const std::vector<Sight> sights = sightsOf(finished);
    const Parts parts(sights);
    RiskBelief belief;
    belief.houses = static_cast<int>(parts.houses.size());
    const double seen = static_cast<double>(sights.size());
    const double free = std::max(0.0, seen - parts.workKinds() - belief.houses + 1);
    const double house = betweenHouses(
        parts, drawn(parts.rest, free, RiskBelief::starterWorkSpread));
    belief.houseFreedom = RiskBelief::starterWeight + std::max(0, belief.houses - 1);
    // Rests are short of freedom by what the means took: as much for each work as for all.
    const double share = sights.empty() ? 0 : free / seen;
    double shared = 0; // variance that the houses seen have put into all drifts alike
    for (std::size_t i = 0; i < workCount; ++i) {
        const int count = parts.works[i].count;
        WorkBelief& work = belief.works[i];
        work.houses = count;
        work.freedom = RiskBelief::starterWeight + share * count;
        work.variance = drawn(parts.squares[i], share * count, RiskBelief::starterWorkSpread);
        const double prior = square(RiskBelief::starterDriftSpread);
        if (count == 0) {
            work.variance += prior;
            continue;
        }
        const double kept = prior / (prior + (work.variance + house) / count);
        work.drift = kept * parts.works[i].mean();
        shared = std::max(shared, square(kept) * house / count);
        work.variance += kept * work.variance / count;
    }
    belief.houseVariance = house + shared;
    return belief;
}

} // namespace miterbook
