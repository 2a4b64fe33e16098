// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <vector>

namespace miterbook {

/// A straight line through the origin, y = slope x: hours = rate x quantity.
struct OriginFit {
    double slope = 0;
    double error = 0;    ///< standard error of the slope; 0 with one point
    double residual = 0; ///< standard deviation of y about the line; 0 with one point
    int freedom = 0;     ///< points - 1

    bool operator==(const OriginFit&) const = default;
};

/// Least squares without an intercept. Error: a sentence without points of x other than 0.
/// Source: NIST StRD, linear regression, model y = B1 x + e.
Result<OriginFit> fitThroughOrigin(const std::vector<double>& x, const std::vector<double>& y);

} // namespace miterbook
