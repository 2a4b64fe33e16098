// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/spares.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

struct Bought {
    int count = 0;
    Money price;
};

} // namespace

std::optional<SpareSticks> spareSticks(const StickPlan& plan, int count) {
    std::map<Length, Bought, std::greater<>> byLength;
    for (const CutPattern& pattern : plan.patterns) {
        if (pattern.offcut || pattern.times <= 0)
            continue;
        Bought& bought = byLength[pattern.stick];
        bought.count += pattern.times;
        bought.price = pattern.price;
    }
    if (byLength.empty() || count <= 0)
        return std::nullopt;
    const auto most = std::ranges::max_element(
        byLength, {}, [](const auto& entry) { return entry.second.count; });
    return SpareSticks{most->first, count, most->second.price};
}

} // namespace miterbook
