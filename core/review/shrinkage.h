// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace miterbook {

// Few houses of each plan, builder or year: their means are drawn towards the mean of all, the more
// so the less is known of each.

/// A mean that was seen, and the variance of its error.
struct GroupMean {
    double mean = 0;
    double variance = 0; ///< positive
};

/// What all groups say together.
struct PooledMean {
    double mean = 0;    ///< weighted by 1 / (variance + between)
    double error = 0;   ///< its standard error
    double between = 0; ///< variance of the groups' true means about it
};

/// Variance between groups by the method of moments, not below 0.
/// Source: DerSimonian and Laird, Meta-analysis in clinical trials, 1986.
PooledMean poolDerSimonianLaird(const std::vector<GroupMean>& groups);

/// A group's mean after shrinking.
struct ShrunkMean {
    double mean = 0;
    double error = 0; ///< posterior standard deviation, the pool taken as known
    double kept = 0;  ///< share of its own distance from the pool that it keeps, 0 to 1
};

/// Normal shrinkage: between / (between + variance) of each distance from the pool is kept.
std::vector<ShrunkMean> shrink(const std::vector<GroupMean>& groups, const PooledMean& pool);

/// The share c of the distance from the grand mean that groups of equal variance keep:
/// 1 - (k - 3) variance / S, S the sum of squares about the mean; not below 0. From four groups on;
/// 1 with fewer. Source: Efron and Morris, Stein's Paradox in Statistics, 1977.
double jamesSteinShare(const std::vector<double>& means, double variance);

/// Events over an exposure, as callbacks over houses: the rate expected with a Gamma(shape, rate)
/// belief before, (shape + events) / (rate + exposure).
double gammaPoissonRate(double events, double exposure, double shape, double rate);

} // namespace miterbook
