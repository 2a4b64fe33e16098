// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/contract.h"

#include "basics/quote.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

bool isDone(const std::vector<Extra>& extras, Id<Extra> id) {
    const auto found = std::ranges::find(extras, id, &Extra::id);
    return found != extras.end()
        && (found->state == ExtraState::done || found->state == ExtraState::billed);
}

std::vector<ValueProgress> evenProgress(const std::vector<ValueLine>& schedule,
    Percent ofContract, const std::vector<Extra>& extras) {
    std::vector<ValueProgress> progress;
    for (const ValueLine& line : schedule) {
        if (!line.key.extra)
            progress.push_back({line.key, ofContract});
        else if (isDone(extras, line.key.extra))
            progress.push_back({line.key, Percent::hundred()});
    }
    return progress;
}

} // namespace

std::vector<ValueLine> scheduleOfValues(
    const std::vector<ContractLine>& lines, const std::vector<Extra>& extras) {
    std::map<PieceOfWork, Money> works;
    for (const ContractLine& line : lines)
        works[line.work] += line.price;
    std::vector<ValueLine> schedule;
    for (const auto& [work, price] : works)
        schedule.push_back({{work, {}}, capitalised(word(work)), price});
    for (const Extra& extra : extras) {
        if (isAgreed(extra))
            schedule.push_back({{PieceOfWork::extras, extra.id}, extra.title, extra.price});
    }
    return schedule;
}

Money valueOf(const std::vector<ValueLine>& schedule) {
    Money sum;
    for (const ValueLine& line : schedule)
        sum += line.amount;
    return sum;
}

Money earnedToDate(
    const std::vector<ValueLine>& schedule, const std::vector<ValueProgress>& progress) {
    Money earned;
    for (const ValueLine& line : schedule) {
        const auto found = std::ranges::find(progress, line.key, &ValueProgress::key);
        if (found != progress.end())
            earned += share(line.amount, found->toDate);
    }
    return earned;
}

std::vector<ValueProgress> progressByStage(const std::vector<ValueLine>& schedule,
    const std::vector<DrawStage>& stages, int reached, const std::vector<Extra>& extras) {
    Percent sum;
    for (const DrawStage& stage : stages) {
        if (stage.position <= reached)
            sum = sum + stage.share;
    }
    return evenProgress(schedule, std::min(sum, Percent::hundred()), extras);
}

std::vector<ValueProgress> progressOnCompletion(
    const std::vector<ValueLine>& schedule, const std::vector<Extra>& extras) {
    return evenProgress(schedule, Percent::hundred(), extras);
}

} // namespace miterbook
