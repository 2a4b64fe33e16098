// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate_lines.h"

#include <cmath>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

using LineKey = std::tuple<PieceOfWork, Task, Conditions>;

EstimateLine gathered(const LineKey& key, const std::vector<const TaskCount*>& counts) {
    EstimateLine line;
    std::tie(line.work, line.task, line.conditions) = key;
    for (const TaskCount* count : counts) {
        line.quantity += count->quantity;
        line.sources.push_back(count->source);
    }
    return line;
}

void price(EstimateLine& line, const PriceBook& prices, Money crewRate) {
    if (const LabourRate* rate = prices.rate(line.task))
        line.minutes = rate->minutes;
    line.factor = prices.factor(line.conditions);
    line.hours = hoursFor(line.quantity, line.minutes, line.factor);
    line.labour = labourCost(line.hours, crewRate);
    if (const PiecePrice* own = prices.piecePrice(line.task))
        line.piecePrice = cost(line.quantity, own->price);
}

} // namespace

Hours hoursFor(Quantity quantity, MinutesPerUnit minutes, double factor) {
    return Hours::minutes(std::llround(quantity.toDouble() * minutes.toDouble() * factor));
}

Money labourCost(Hours hours, Money rate) {
    return Money::cents(roundedQuotient(Wide(hours.minutes()) * rate.cents(), 60));
}

std::vector<EstimateLine> estimateLines(
    const Takeoff& takeoff, const PriceBook& prices, Money crewRate) {
    std::map<LineKey, std::vector<const TaskCount*>> groups;
    for (const TaskCount& count : takeoff.tasks)
        groups[{count.work, count.task, count.conditions}].push_back(&count);
    std::vector<EstimateLine> lines;
    lines.reserve(groups.size());
    for (const auto& [key, counts] : groups) {
        lines.push_back(gathered(key, counts));
        price(lines.back(), prices, crewRate);
    }
    return lines;
}

} // namespace miterbook
