// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/origin_fit.h"

#include <cassert>
#include <cmath>

namespace miterbook {

Result<OriginFit> fitThroughOrigin(const std::vector<double>& x, const std::vector<double>& y) {
    assert(x.size() == y.size());
    double xx = 0;
    double xy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += x[i] * x[i];
        xy += x[i] * y[i];
    }
    if (xx <= 0)
        return badInput("There is no quantity to learn a rate from.");
    OriginFit fit;
    fit.slope = xy / xx;
    fit.freedom = static_cast<int>(x.size()) - 1;
    if (fit.freedom == 0)
        return fit;
    double squares = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double off = y[i] - fit.slope * x[i];
        squares += off * off;
    }
    fit.residual = std::sqrt(squares / fit.freedom);
    fit.error = fit.residual / std::sqrt(xx);
    return fit;
}

} // namespace miterbook
