// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/moisture.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

struct Movement {
    Wood wood;
    double radial;
    double tangential;
};

/// FPL-GTR-190 (2010), table 13-5; the pines, firs and yellow-poplar agree with the shrinkages of
/// its table 4-3 by coefficientFromShrinkage.
constexpr std::array movements{
    Movement{Wood::whitePine, .00071, .00212},
    Movement{Wood::ponderosaPine, .00133, .00216},
    Movement{Wood::whiteFir, .00112, .00245},
    Movement{Wood::douglasFir, .00165, .00267},
    Movement{Wood::poplar, .00158, .00289},
    Movement{Wood::redAlder, .00151, .00256},
    Movement{Wood::redOak, .00158, .00369},
    Movement{Wood::whiteOak, .00180, .00365},
    Movement{Wood::hardMaple, .00165, .00353},
    Movement{Wood::redMaple, .00137, .00289},
    Movement{Wood::cherry, .00126, .00248},
    Movement{Wood::walnut, .00190, .00274},
};

} // namespace

double equilibriumMoisture(double fahrenheit, double humidity) {
    const double t = fahrenheit;
    const double h = std::clamp(humidity, 0.0, 1.0);
    const double w = 330 + 0.452 * t + 0.00415 * t * t;
    const double k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
    const double k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
    const double k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
    const double kh = k * h;
    const double both = k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * both) / (1 + k1 * kh + both));
}

double changeCoefficient(Wood wood, Grain grain) {
    for (const Movement& movement : movements) {
        if (movement.wood == wood)
            return grain == Grain::flat ? movement.tangential : movement.radial;
    }
    return 0;
}

double coefficientFromShrinkage(double percent) {
    const double perPoint = percent / 30;
    return perPoint / (100 - 20 * perPoint);
}

Length widthChange(Length width, double coefficient, double fromMoisture, double toMoisture) {
    return Length::fromInches(width.toInches() * coefficient * (toMoisture - fromMoisture));
}

MiterChange miterChange(
    Length faceWidth, double coefficient, double fromMoisture, double toMoisture) {
    const Length change = widthChange(faceWidth, coefficient, fromMoisture, toMoisture);
    if (change == Length())
        return {};
    return {Length::fromInches(std::abs(change.toInches()) * std::numbers::sqrt2),
        change < Length() ? MiterEnd::heel : MiterEnd::toe};
}

} // namespace miterbook
