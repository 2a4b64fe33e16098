// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/hours.h"
#include "basics/quantity.h"

#include <vector>

namespace miterbook {

/// What one house says about a rate: so many units took so long. Time is in minutes after dividing
/// by the factors of the conditions, where conditions are not kept apart.
struct RateSighting {
    Date date = noDate; ///< when the house was finished
    Quantity quantity;  ///< more than 0
    double minutes = 0; ///< more than 0

    double rate() const { return minutes / quantity.toDouble(); }
};

/// How firmly the book's rate is believed, and how much houses differ; standard deviations of the
/// natural logarithm, about the relative deviation.
struct RateBelief {
    double bookSpread = 0.2;  ///< of the book's rate about the shop's true rate
    double houseSpread = 0.2; ///< of a large house's rate about the shop's true rate
    double smallJob = 240;    ///< minutes: a house with so little of the task says half as much
    double priorHouses = 4;   ///< how many houses the belief in houseSpread is worth
};

/// A rate learned from houses, in minutes a unit.
struct LearnedRate {
    double minutes = 0;
    double low = 0; ///< interval in which the shop's true rate is with `sureness`
    double high = 0;
    double houseSpread = 0; ///< of houses about it, as learned
    double freedom = 0;     ///< degrees of freedom behind the interval
    int houses = 0;
    int odd = 0; ///< sightings far off, of which only the direction was believed

    bool operator==(const LearnedRate&) const = default;
};

/// How far, in standard deviations, a sighting is believed at its face value (Huber, Robust
/// Estimation of a Location Parameter, 1964; 95 % as good as the mean where nothing is odd).
inline constexpr double believedUpTo = 1.345;

/// Learns the shop's rate from sightings, starting at the book's: the mode of a normal belief about
/// ln rate and Huber's likelihood of each sighting's ln rate, so that one absurd entry moves the
/// rate by no more than mostMoved(). Rates are means over houses, which a log-normal scatter puts
/// at exp(houseSpread^2 / 2) above its middle. The interval is Student's t about the mode, at
/// `sureness` (0.9: 5 % are left out at each end). Without sightings the book's rate is left.
LearnedRate learnRate(MinutesPerUnit bookRate, const std::vector<RateSighting>& sightings,
    const RateBelief& belief = {}, double sureness = 0.9);

/// By what factor at most one more entry, however absurd, moves the rate learned from `others`, up
/// or down: as far as the hardest push that Huber's likelihood gives any entry, k / houseSpread
/// with k = believedUpTo. exp(k b^2 / houseSpread), 1.31 by default, before there are any; 1.05
/// with five large houses that agree.
double mostMoved(MinutesPerUnit bookRate, const std::vector<RateSighting>& others,
    const RateBelief& belief = {});

/// The learned rate after each house in the order of dates: its trend.
struct RateTrendPoint {
    Date date = noDate;
    double seen = 0; ///< the house's own minutes a unit
    LearnedRate learned;
};
std::vector<RateTrendPoint> rateTrend(MinutesPerUnit bookRate, std::vector<RateSighting> sightings,
    const RateBelief& belief = {}, double sureness = 0.9);

} // namespace miterbook
