// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/profile_swaps.h"

#include "basics/quote.h"

namespace miterbook {

ProfileSwaps::ProfileSwaps(const Table<Swap>& swaps, const std::vector<const Variant*>& chosen,
    std::vector<std::string>& remarks) {
    for (const Variant* variant : chosen)
        take(swaps, *variant, remarks);
}

Id<Profile> ProfileSwaps::operator()(Id<Profile> profile) const {
    const auto it = m_to.find(profile);
    return it == m_to.end() ? profile : it->second.profile;
}

void ProfileSwaps::take(
    const Table<Swap>& swaps, const Variant& variant, std::vector<std::string>& remarks) {
    const auto earlier = m_to;
    for (const auto& [id, swap] : swaps) {
        if (swap.variant != variant.id || !swap.from)
            continue;
        const std::string spoken = std::string(word(variant.kind)) + " " + variant.name;
        if (!swap.to) {
            remarks.push_back(
                capitalised(spoken) + " swaps a profile for none; that swap is left out.");
            continue;
        }
        for (const auto& [from, to] : earlier) {
            if (to.profile == swap.from)
                m_to[from] = {swap.to, &variant};
        }
        if (const auto it = m_to.find(swap.from); it != m_to.end())
            remarks.push_back(capitalised(word(it->second.by->kind)) + " " + it->second.by->name
                + " and " + spoken + " both swap the same profile; " + variant.name + " is used.");
        m_to[swap.from] = {swap.to, &variant};
    }
}

} // namespace miterbook
