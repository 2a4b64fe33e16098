// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/stick_memory.h"

#include <algorithm>

namespace miterbook {

StickQuestion stickQuestion(const StickNeed& need, const PriceBook& prices) {
    return {need, stickSupply(need.profile, prices), prices.practice(),
        std::string(prices.profileName(need.profile)), prices.shop().lengths()};
}

const StickPlan* StickMemory::find(const StickQuestion& question) const {
    const auto it = std::ranges::find_if(
        m_plans, [&](const auto& kept) { return kept.first == question; });
    return it == m_plans.end() ? nullptr : &it->second;
}

void StickMemory::keep(StickQuestion question, StickPlan plan) {
    if (find(question))
        return;
    m_plans.emplace_front(std::move(question), std::move(plan));
    if (m_plans.size() > most)
        m_plans.pop_back();
}

} // namespace miterbook
