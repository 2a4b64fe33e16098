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

const StickSupply::Kind* cheapestByLength(const StickSupply& supply) {
    const StickSupply::Kind* cheapest = nullptr;
    for (const StickSupply::Kind& kind : supply.kinds) {
        if (!kind.offcut
            && (!cheapest
                || Wide(kind.price.cents()) * cheapest->length.nm()
                    < Wide(cheapest->price.cents()) * kind.length.nm()))
            cheapest = &kind;
    }
    return cheapest;
}

namespace {

/// Kept offcuts by the length, as a share of the stick that is cheapest by length.
packing::Salvage salvageOf(const StickSupply& supply, const Practice& practice) {
    const StickSupply::Kind* cheapest = cheapestByLength(supply);
    if (!cheapest || practice.offcutWorth <= Percent())
        return {};
    return {practice.keepOffcut.nm(), share(cheapest->price, practice.offcutWorth).cents(),
        cheapest->length.nm()};
}

/// What an offcut in the rack is worth left there, as the planning of sticks counts it.
std::int64_t worthInRack(Length offcut, const packing::Salvage& salvage) {
    if (offcut.nm() < salvage.shortest)
        return 0;
    return static_cast<std::int64_t>(Wide(offcut.nm()) * salvage.cents / salvage.perLength);
}

} // namespace

packing::Problem cuttingProblem(const std::vector<StickNeed::Lot>& lots, bool mitered,
    const StickSupply& supply, const Practice& practice) {
    packing::Problem problem;
    problem.salvage = salvageOf(supply, practice);
    for (const StickSupply::Kind& kind : supply.kinds) {
        problem.sticks.push_back({kind.length.nm(),
            kind.offcut ? worthInRack(kind.length, problem.salvage) : kind.price.cents(),
            kind.offcut ? std::optional<std::int64_t>(kind.available) : std::nullopt});
    }
    for (const StickNeed::Lot& lot : lots)
        problem.pieces.push_back({lot.length.nm(), lot.count});
    problem.kerf = kerfTaken(practice.kerf, mitered).nm();
    problem.trim = std::max(practice.endTrim, Length()).nm();
    return problem;
}

} // namespace miterbook
