// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/savings.h"

namespace miterbook {

BatchSavings batchSavings(
    int pieces, int settings, int readings, double minutesPerStopMove, double minutesPerTapePull) {
    const auto reckoned = [&](int moves, int pulls) {
        return SetUps{moves, pulls, moves * minutesPerStopMove + pulls * minutesPerTapePull};
    };
    return {reckoned(pieces, 2 * pieces), reckoned(settings, settings + readings)};
}

} // namespace miterbook
