// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate_lines.h"

#include "book/said_words.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

using LineKey = std::tuple<PieceOfWork, Task, Conditions>;

std::map<LineKey, EstimateLine> gather(const Takeoff& takeoff) {
    std::map<LineKey, EstimateLine> lines;
    for (const TaskCount& task : takeoff.tasks) {
        EstimateLine& line = lines[{task.work, task.task, task.conditions}];
        line.quantity += task.quantity;
        if (line.sources.empty() || line.sources.back() != task.source)
            line.sources.push_back(task.source);
    }
    return lines;
}

void price(EstimateLine& line, const PriceBook& prices, Money crewRate) {
    if (const LabourRate* rate = prices.rate(line.task))
        line.minutes = rate->minutes;
    line.factor = prices.factor(line.conditions);
    line.hours = hoursFor(line.quantity, line.minutes, line.factor);
    line.labour = labourFor(line.hours, crewRate);
    if (const PiecePrice* piece = prices.piecePrice(line.task))
        line.piecePrice = cost(line.quantity, piece->price);
}

/// Lines come in task order within a piece of work; a task may stand in several lines.
void sayUnrated(const std::vector<EstimateLine>& lines, const PriceBook& prices,
    std::vector<std::string>& problems) {
    std::vector<Task> named;
    for (const EstimateLine& line : lines) {
        if (prices.rate(line.task) || std::ranges::count(named, line.task) > 0)
            continue;
        named.push_back(line.task);
        problems.push_back("The book has no labour rate for \""
            + std::string(said(line.task, prices.shop().unit)) + "\"; it takes no hours here.");
    }
}

} // namespace

Hours hoursFor(Quantity quantity, MinutesPerUnit minutes, double factor) {
    constexpr std::int64_t factorUnits = 100'000'000;
    const auto scaled = static_cast<std::int64_t>(std::llround(factor * factorUnits));
    return Hours::minutes(
        roundedQuotient(Wide(quantity.thousandths()) * minutes.hundredths() * scaled,
            Wide(1000) * 100 * factorUnits));
}

Money labourFor(Hours hours, Money rate) {
    return Money::cents(roundedQuotient(Wide(hours.minutes()) * rate.cents(), 60));
}

std::vector<EstimateLine> estimateLines(const Takeoff& takeoff, const PriceBook& prices,
    Money crewRate, std::vector<std::string>& problems) {
    std::vector<EstimateLine> lines;
    for (auto& [key, line] : gather(takeoff)) {
        std::tie(line.work, line.task, line.conditions) = key;
        price(line, prices, crewRate);
        lines.push_back(std::move(line));
    }
    sayUnrated(lines, prices, problems);
    return lines;
}

} // namespace miterbook
