// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_supply.h"

#include <algorithm>
#include <tuple>

namespace miterbook {

std::vector<StickOnHand> sticksOnHand(const BuyList& buy, const PriceBook& prices) {
    std::vector<StickOnHand> sticks;
    const auto add = [&](Id<Profile> profile, Length length, bool fromRack, int count) {
        if (count <= 0 || length <= Length())
            return;
        for (StickOnHand& stick : sticks) {
            if (stick.profile == profile && stick.length == length && stick.fromRack == fromRack) {
                stick.count += count;
                return;
            }
        }
        sticks.push_back({profile, length, fromRack, count});
    };
    for (const auto& [id, offcut] : prices.of<Offcut>())
        add(offcut.profile, offcut.length, true, offcut.count);
    for (const BuyLine& line : buy.sticks)
        add(line.profile, line.length, false, line.count + line.spare);
    std::ranges::stable_sort(sticks, [](const StickOnHand& a, const StickOnHand& b) {
        return std::tuple(a.profile, !a.fromRack, b.length)
            < std::tuple(b.profile, !b.fromRack, a.length);
    });
    return sticks;
}

} // namespace miterbook
