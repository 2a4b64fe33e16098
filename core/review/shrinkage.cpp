// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/shrinkage.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace miterbook {

namespace {

PooledMean pool(const std::vector<GroupMean>& groups, double between) {
    double weights = 0;
    double sum = 0;
    for (const GroupMean& group : groups) {
        const double weight = 1 / (group.variance + between);
        weights += weight;
        sum += weight * group.mean;
    }
    if (weights <= 0)
        return {};
    return {sum / weights, 1 / std::sqrt(weights), between};
}

} // namespace

PooledMean poolDerSimonianLaird(const std::vector<GroupMean>& groups) {
    const PooledMean fixed = pool(groups, 0);
    double weights = 0;
    double squares = 0;
    double q = 0; // weighted sum of squares about the fixed mean
    for (const GroupMean& group : groups) {
        const double weight = 1 / group.variance;
        weights += weight;
        squares += weight * weight;
        q += weight * (group.mean - fixed.mean) * (group.mean - fixed.mean);
    }
    const double scale = groups.empty() ? 0 : weights - squares / weights;
    if (groups.size() < 2 || scale <= 0)
        return fixed;
    const double freedom = static_cast<double>(groups.size() - 1);
    return pool(groups, std::max(0.0, (q - freedom) / scale));
}

std::vector<ShrunkMean> shrink(const std::vector<GroupMean>& groups, const PooledMean& pool) {
    std::vector<ShrunkMean> shrunk;
    for (const GroupMean& group : groups) {
        const double kept = pool.between / (pool.between + group.variance);
        shrunk.push_back(
            {pool.mean + kept * (group.mean - pool.mean), std::sqrt(kept * group.variance), kept});
    }
    return shrunk;
}

double jamesSteinShare(const std::vector<double>& means, double variance) {
    if (means.size() < 4)
        return 1;
    const double count = static_cast<double>(means.size());
    const double mean = std::accumulate(means.begin(), means.end(), 0.0) / count;
    double squares = 0;
    for (const double each : means)
        squares += (each - mean) * (each - mean);
    if (squares <= 0)
        return 0;
    return std::max(0.0, 1 - (count - 3) * variance / squares);
}

double gammaPoissonRate(double events, double exposure, double shape, double rate) {
    return (shape + events) / (rate + exposure);
}

} // namespace miterbook
