// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/stick_supply.h"

#include "takeoff/geometry.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Offcuts of one length are one kind, longest first.
void addOffcuts(StickSupply& supply, std::vector<Offcut> offcuts) {
    std::ranges::stable_sort(offcuts, std::ranges::greater(), &Offcut::length);
    for (const Offcut& offcut : offcuts) {
        if (offcut.count <= 0 || offcut.length <= Length())
            continue;
        if (!supply.kinds.empty() && supply.kinds.back().length == offcut.length)
            supply.kinds.back().available += offcut.count;
        else
            supply.kinds.push_back({offcut.length, true, Money(), offcut.count});
    }
}

} // namespace

StickSupply stickSupply(Id<Profile> profile, const PriceBook& prices) {
    StickSupply supply;
    addOffcuts(supply, prices.offcuts(profile));
    for (const Stick& stick : prices.stockedSticks(profile)) {
        supply.stocked = true;
        if (stick.price <= Money() || stick.length <= Length())
            continue;
        supply.priced = true;
        supply.kinds.push_back({stick.length, false, stick.price, 0});
    }
    const Length trim = std::max(prices.practice().endTrim, Length());
    for (const StickSupply::Kind& kind : supply.kinds)
        supply.longest = std::max(supply.longest, kind.length - trim);
    return supply;
}

packing::Problem cuttingProblem(const std::vector<StickNeed::Lot>& lots, bool mitered,
    const StickSupply& supply, const Practice& practice) {
    packing::Problem problem;
    for (const StickSupply::Kind& kind : supply.kinds) {
        problem.sticks.push_back({kind.length.nm(), kind.price.cents(),
            kind.offcut ? std::optional<std::int64_t>(kind.available) : std::nullopt});
    }
    for (const StickNeed::Lot& lot : lots)
        problem.pieces.push_back({lot.length.nm(), lot.count});
    problem.kerf = kerfTaken(practice.kerf, mitered).nm();
    problem.trim = std::max(practice.endTrim, Length()).nm();
    return problem;
}

} // namespace miterbook
