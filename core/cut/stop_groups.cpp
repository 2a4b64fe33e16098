// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/stop_groups.h"

#include <algorithm>
#include <numeric>

namespace miterbook {

namespace {

/// Where a setting may lie that serves an item.
struct Reach {
    Length low;
    Length high;
};

Reach reachOf(const StopItem& item, Length tolerance) {
    const Reach reach{item.most - tolerance, item.least + tolerance};
    if (reach.low <= reach.high)
        return reach;
    const Length middle = (item.least + item.most) / 2;
    return {middle, middle};
}

/// The middle of what is served, on a step where one lies within reach.
Length settingWithin(Reach reach, Length middle, Length step) {
    const Length wanted = std::clamp(middle, reach.low, reach.high);
    if (step <= Length())
        return wanted;
    Length stepped = roundTo(wanted, step);
    if (stepped > reach.high)
        stepped -= step;
    else if (stepped < reach.low)
        stepped += step;
    return stepped >= reach.low && stepped <= reach.high ? stepped : wanted;
}

} // namespace

std::vector<StopGroup> groupStops(
    const std::vector<StopItem>& items, Length tolerance, Length step) {
    std::vector<std::size_t> order(items.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        const Reach one = reachOf(items[a], tolerance);
        const Reach other = reachOf(items[b], tolerance);
        return one.high != other.high ? one.high < other.high : one.low < other.low;
    });
    std::vector<StopGroup> groups;
    for (std::size_t at = 0; at < order.size();) {
        Reach common = reachOf(items[order[at]], tolerance);
        const Length stab = common.high;
        Length least = items[order[at]].least;
        Length most = items[order[at]].most;
        StopGroup group;
        for (; at < order.size(); ++at) {
            const Reach reach = reachOf(items[order[at]], tolerance);
            if (reach.low > stab)
                break;
            common = {std::max(common.low, reach.low), std::min(common.high, reach.high)};
            least = std::min(least, items[order[at]].least);
            most = std::max(most, items[order[at]].most);
            group.items.push_back(order[at]);
        }
        group.setting = settingWithin(common, (least + most) / 2, step);
        std::ranges::sort(group.items);
        groups.push_back(std::move(group));
    }
    std::ranges::reverse(groups);
    return groups;
}

std::size_t servingSetting(
    const std::vector<Length>& settings, const StopItem& item, Length tolerance) {
    const Reach reach = reachOf(item, tolerance);
    const Length middle = (item.least + item.most) / 2;
    const auto away
        = [&](Length setting) { return setting > middle ? setting - middle : middle - setting; };
    std::size_t best = settings.size();
    for (std::size_t i = 0; i < settings.size(); ++i) {
        if (settings[i] < reach.low || settings[i] > reach.high)
            continue;
        if (best == settings.size() || away(settings[i]) < away(settings[best])
            || (away(settings[i]) == away(settings[best]) && settings[i] > settings[best]))
            best = i;
    }
    return best;
}

} // namespace miterbook
