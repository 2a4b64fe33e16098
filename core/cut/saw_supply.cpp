// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_supply.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

std::vector<StickOnHand> sticksOnHand(
    const BuyList& buy, const PriceBook& prices, const Table<RackMove>& moves) {
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
    for (const auto& [id, move] : moves) {
        if (!move.put)
            add(move.profile, move.length, true, 1);
    }
    for (const BuyLine& line : buy.sticks)
        add(line.profile, line.length, false, line.count + line.spare);
    std::ranges::stable_sort(sticks, [](const StickOnHand& a, const StickOnHand& b) {
        return std::tuple(a.profile, !a.fromRack, b.length)
            < std::tuple(b.profile, !b.fromRack, a.length);
    });
    return sticks;
}

PriceBook withOwnRack(const PriceBook& prices, const Table<RackMove>& moves) {
    PriceBook own = prices;
    std::map<std::int64_t, int> putAndTaken; // of one row of the rack: neither counts
    for (const auto& [id, move] : moves)
        putAndTaken[move.offcut] += move.put ? 1 : 0;
    for (const auto& [id, move] : moves) {
        if (move.put || putAndTaken[move.offcut]-- > 0)
            continue;
        Offcut back;
        back.id = Id<Offcut>(-move.id.value()); // of no row: seen by these figures only
        back.profile = move.profile;
        back.length = move.length;
        own.of<Offcut>().put(std::move(back));
    }
    for (const auto& [row, count] : putAndTaken) {
        const Offcut* there = own.of<Offcut>().find(Id<Offcut>(row));
        if (!there || count <= 0)
            continue;
        Offcut less = *there;
        less.count = std::max(less.count - count, 0);
        own.of<Offcut>().put(std::move(less));
    }
    return own;
}

} // namespace miterbook
