// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "bid/estimate.h"
#include "bid/per_work.h"

#include <array>
#include <cstdint>
#include <vector>

namespace miterbook {

// What the shop's own finished houses say about a bid: how the hours of the next house scatter.
//
// Hours used over hours bid, as logarithms: y = drift(work) + house + rest. A house that goes badly
// goes badly in every piece of work; the rest is each piece of work's own. Drift and spreads begin
// at the starter's and give way to the shop's houses as these grow in number (trade practice has no
// source for the starter's spreads: they are common practice, and the screen says so).

/// One piece of work of a finished house.
struct FinishedWork {
    std::int64_t house = 0; ///< which house; equal for works of the same house
    PieceOfWork work = PieceOfWork::doors;
    Hours bid;
    Hours used;
};

/// What is believed of one piece of work.
struct WorkBelief {
    double drift = 0;    ///< expected log of used over bid
    double variance = 0; ///< of one house's log about it, the house's own share left out
    double freedom = 0;  ///< degrees of freedom of the variance
    int houses = 0;      ///< finished houses that say something of it

    bool operator==(const WorkBelief&) const = default;
};

struct RiskBelief {
    /// The starter's, for a shop with no finished house: standard deviations of the log.
    static constexpr double starterWorkSpread = 0.20;
    static constexpr double starterHouseSpread = 0.10;
    static constexpr double starterDriftSpread = 0.15; ///< how far its rates may be off
    /// So many houses' worth of weight the starter's spreads have beside the shop's own.
    static constexpr double starterWeight = 6;
    /// A log beyond this is taken as this (a typing slip, a house gone wrong beyond comparison).
    static constexpr double furthest = 1.4; ///< four times the hours bid, or a quarter

    int houses = 0;
    double houseVariance = 0; ///< of a whole house's log, what is unknown of its mean taken in
    double houseFreedom = 0;  ///< degrees of freedom of the variance
    std::array<WorkBelief, workCount> works{};

    const WorkBelief& of(PieceOfWork work) const { return works[static_cast<std::size_t>(work)]; }
    bool operator==(const RiskBelief&) const = default;
};

/// Fits the belief. Works without bid or used hours say nothing. Variances by the method of moments
/// for two-way data with houses as random effects (Searle, Casella and McCulloch, Variance
/// Components, 1992), drawn towards the starter's; drifts by normal shrinkage.
RiskBelief riskBelief(const std::vector<FinishedWork>& finished);

/// The hours of one piece of work of the house that is bid.
struct WorkRisk {
    PieceOfWork work = PieceOfWork::doors;
    Hours bid;
    Hours expected;
    Hours low; ///< 90 of 100 houses lie between
    Hours high;
    double share = 0; ///< of the variance of all hours; shares add up to 1
    int houses = 0;

    bool operator==(const WorkRisk&) const = default;
};

/// How the hours and the cost of the house that is bid may come out. Hours in all are taken as
/// lognormal with the mean and variance that the works' lognormals have together (Fenton 1960),
/// with Student's t in place of the normal for the spreads being estimated, its degrees of freedom
/// those of the sum (Satterthwaite 1946). Overhead, material and consumables are as bid; labour is
/// the hours at the crew rate.
class RiskOutlook {
public:
    RiskOutlook() = default;
    RiskOutlook(const Estimate& estimate, const RiskBelief& belief);

    /// Whether there are hours to look at; everything else is meaningless if not.
    bool any() const { return m_spread > 0; }
    int houses() const { return m_houses; }
    const std::vector<WorkRisk>& works() const { return m_works; }
    Hours expected() const;
    /// So many hours are not passed in `certainty` (0 to 1, both left out) of such houses.
    Hours hoursAt(double certainty) const;
    Money costAt(double certainty) const;
    /// The chance that the hours stay below; 0 to 1.
    double chanceBelow(double hours) const;
    /// Hours at which the price is all used up.
    double breakEvenHours() const;
    double chanceOfProfit() const { return chanceBelow(breakEvenHours()); }
    /// The chance of the profit that was bid, or more.
    double chanceOfTarget() const { return chanceBelow(m_bidHours); }
    /// The price that covers the cost in `certainty` of such houses, and leaves `profit` besides.
    Money priceFor(double certainty, Money profit) const { return costAt(certainty) + profit; }

private:
    void addWorks(const Estimate& estimate, const RiskBelief& belief);

    std::vector<WorkRisk> m_works;
    int m_houses = 0;
    double m_freedom = 1;
    double m_middle = 0; ///< of the log of all hours
    double m_spread = 0;
    double m_mean = 0; ///< hours
    double m_bidHours = 0;
    Money m_crewRate;
    Money m_fixed; ///< foreseen cost that does not go by the hours
    Money m_price;
};

} // namespace miterbook
