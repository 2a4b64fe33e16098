// SPDX-License-Identifier: GPL-3.0-or-later
#include "order/buy_list.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Sticks and rack lines of one profile, longest first.
void addPlan(BuyList& list, const StickPlan& plan, int spare) {
    std::map<Length, BuyLine, std::greater<>> bought;
    std::map<Length, RackLine, std::greater<>> taken;
    for (const CutPattern& pattern : plan.patterns) {
        if (pattern.offcut) {
            RackLine& line = taken[pattern.stick];
            line.profile = plan.profile;
            line.length = pattern.stick;
            line.count += pattern.times;
        } else {
            BuyLine& line = bought[pattern.stick];
            line.profile = plan.profile;
            line.length = pattern.stick;
            line.price = pattern.price;
            line.count += pattern.times;
        }
    }
    if (!bought.empty() && spare > 0) {
        const auto most = std::ranges::max_element(
            bought, {}, [](const auto& entry) { return entry.second.count; });
        most->second.spare = spare;
    }
    for (const auto& [length, line] : bought)
        list.sticks.push_back(line);
    for (const auto& [length, line] : taken)
        list.rack.push_back(line);
}

void addParts(BuyList& list, const Takeoff& takeoff, const PriceBook& prices) {
    std::map<PartUse, int> counts;
    for (const PartCount& part : takeoff.parts)
        counts[part.use] += part.count;
    for (const auto& [use, count] : counts) {
        PartLine line;
        line.use = use;
        line.count = count;
        line.name = word(use);
        if (const Part* part = prices.part(use)) {
            line.name = part->name;
            line.price = part->price;
            line.builderSupplies = part->builderSupplies;
        } else {
            list.problems.push_back("The book has no price for \"" + line.name + "\".");
        }
        list.parts.push_back(line);
    }
}

} // namespace

BuyList buyList(const Takeoff& takeoff, const std::vector<StickPlan>& plans,
    const PriceBook& prices) {
    BuyList list;
    for (const StickPlan& plan : plans) {
        addPlan(list, plan, prices.practice().spareSticks);
        if (!plan.problem.empty())
            list.problems.push_back(plan.problem);
    }
    addParts(list, takeoff, prices);
    for (const BuyLine& line : list.sticks)
        list.sticksCost += line.cost();
    for (const PartLine& line : list.parts)
        list.partsCost += line.cost();
    return list;
}

} // namespace miterbook
