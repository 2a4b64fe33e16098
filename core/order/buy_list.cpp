// SPDX-License-Identifier: GPL-3.0-or-later
#include "order/buy_list.h"

#include "bid/spares.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

using Lines = std::vector<BuyLine>;

/// Adds the lines of one profile, longest stick first.
void addSticks(const StickPlan& plan, int spares, Lines& lines) {
    Lines own;
    for (const CutPattern& pattern : plan.patterns) {
        if (pattern.offcut || pattern.times <= 0)
            continue;
        const auto same = std::ranges::find(own, pattern.stick, &BuyLine::length);
        if (same == own.end())
            own.push_back({plan.profile, pattern.stick, pattern.times, 0, pattern.price});
        else
            same->count += pattern.times;
    }
    std::ranges::stable_sort(own, std::ranges::greater(), &BuyLine::length);
    if (const auto spare = spareSticks(plan, spares))
        std::ranges::find(own, spare->length, &BuyLine::length)->spare = spare->count;
    lines.insert(lines.end(), own.begin(), own.end());
}

void addRack(const StickPlan& plan, std::vector<RackLine>& lines) {
    std::map<Length, int, std::greater<>> counts;
    for (const CutPattern& pattern : plan.patterns) {
        if (pattern.offcut)
            counts[pattern.stick] += pattern.times;
    }
    for (const auto& [length, count] : counts)
        lines.push_back({plan.profile, length, count});
}

void addParts(const Takeoff& takeoff, const PriceBook& prices, BuyList& list) {
    std::map<PartUse, int> counts;
    for (const PartCount& part : takeoff.parts)
        counts[part.use] += part.count;
    for (const auto& [use, count] : counts) {
        if (count <= 0)
            continue;
        const Part* part = prices.part(use);
        if (!part)
            list.problems.push_back(
                "The book has no price for \"" + std::string(word(use)) + "\".");
        list.parts.push_back({use, part ? part->name : std::string(word(use)), count,
            part ? part->price : Money(), part && part->builderSupplies});
    }
}

} // namespace

BuyList buyList(
    const Takeoff& takeoff, const std::vector<StickPlan>& plans, const PriceBook& prices) {
    BuyList list;
    for (const StickPlan& plan : plans) {
        addSticks(plan, prices.practice().spareSticks, list.sticks);
        addRack(plan, list.rack);
        if (!plan.problem.empty())
            list.problems.push_back(plan.problem);
    }
    addParts(takeoff, prices, list);
    for (const BuyLine& line : list.sticks)
        list.sticksCost += line.cost();
    for (const PartLine& line : list.parts)
        list.partsCost += line.cost();
    return list;
}

} // namespace miterbook
