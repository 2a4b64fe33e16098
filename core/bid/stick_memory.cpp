// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/stick_memory.h"

#include <algorithm>

namespace miterbook {

StickQuestion stickQuestion(const StickNeed& need, const PriceBook& prices) {
    return {need, stickSupply(need.profile, prices), prices.practice(),
        std::string(prices.profileName(need.profile)), prices.shop().lengths()};
}

const StickPlan* StickMemory::find(const StickQuestion& question) const {
    const auto plans = m_plans.find(question.need.profile);
    if (plans == m_plans.end())
        return nullptr;
    const auto it = std::ranges::find_if(
        plans->second, [&](const auto& kept) { return kept.first == question; });
    return it == plans->second.end() ? nullptr : &it->second;
}

void StickMemory::keep(StickQuestion question, StickPlan plan) {
    if (find(question))
        return;
    auto& plans = m_plans[question.need.profile];
    plans.emplace_front(std::move(question), std::move(plan));
    if (plans.size() > m_most)
        plans.pop_back();
}

} // namespace miterbook
