// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/steady_order.h"

#include <algorithm>
#include <numeric>

namespace miterbook {

std::vector<std::size_t> steadyOrder(const std::vector<std::int64_t>& keys) {
    std::vector<std::size_t> places(keys.size());
    std::iota(places.begin(), places.end(), std::size_t(0));
    std::ranges::stable_sort(places, {}, [&](std::size_t place) { return keys[place]; });
    return places;
}

} // namespace miterbook
