// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/stick_problem.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

void addStick(StickProblem& cutting, Length length, Money price, std::optional<std::int64_t> have) {
    cutting.problem.sticks.push_back({length.nm(), price.cents(), have});
    cutting.sticks.push_back(length);
    cutting.prices.push_back(price);
    cutting.fromRack.push_back(have.has_value());
}

CutPattern patternOf(const StickProblem& cutting, const packing::Pattern& from) {
    CutPattern pattern;
    pattern.stick = cutting.sticks[from.stick];
    pattern.offcut = cutting.fromRack[from.stick];
    pattern.price = cutting.prices[from.stick];
    pattern.times = static_cast<int>(from.times);
    for (const packing::Share& share : from.shares)
        pattern.pieces.insert(pattern.pieces.end(), static_cast<std::size_t>(share.count),
            cutting.lots[share.piece]);
    std::ranges::sort(pattern.pieces, std::greater<>());
    return pattern;
}

} // namespace

Length kerfFor(const Practice& practice, bool mitered) {
    if (!mitered)
        return practice.kerf;
    const double slanted = static_cast<double>(practice.kerf.nm()) * std::numbers::sqrt2;
    const double step = static_cast<double>(Length::sixtyFourths(1).nm());
    return Length::sixtyFourths(static_cast<std::int64_t>(std::ceil(slanted / step)));
}

std::vector<CutPattern> StickProblem::patterns(const packing::Plan& plan) const {
    std::vector<CutPattern> all;
    for (const packing::Pattern& pattern : plan.patterns)
        all.push_back(patternOf(*this, pattern));
    std::ranges::stable_sort(all, [](const CutPattern& a, const CutPattern& b) {
        if (a.offcut != b.offcut)
            return a.offcut;
        return a.stick != b.stick ? a.stick > b.stick : a.pieces > b.pieces;
    });
    return all;
}

StickProblem stickProblem(const StickNeed& need, const PriceBook& prices) {
    StickProblem cutting;
    const Practice& practice = prices.practice();
    cutting.problem.kerf = kerfFor(practice, need.mitered).nm();
    cutting.problem.trim = practice.endTrim.nm();
    for (const Stick& stick : prices.stockedSticks(need.profile))
        addStick(cutting, stick.length, stick.price, std::nullopt);
    for (const Offcut& offcut : prices.offcuts(need.profile))
        addStick(cutting, offcut.length, Money(), offcut.count);
    for (const StickNeed::Lot& lot : need.lots) {
        cutting.problem.pieces.push_back({lot.length.nm(), lot.count});
        cutting.lots.push_back(lot.length);
    }
    return cutting;
}

} // namespace miterbook
