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

/// The share of one piece of work that is done by the terms of the contract.
Percent shareDone(const Contract& contract, PieceOfWork work) {
    Percent sum;
    switch (contract.drawBy) {
    case DrawBy::completion:
        return contract.completed == noDate ? Percent() : Percent::hundred();
    case DrawBy::stage:
        for (const ContractStage& stage : contract.stages)
            sum = stage.reached == noDate ? sum : sum + stage.share;
        return std::min(sum, Percent::hundred());
    case DrawBy::work:
        break;
    }
    const auto value = std::ranges::find(contract.values, work, &ContractValue::work);
    return value == contract.values.end() ? Percent() : value->done;
}

} // namespace

std::vector<ValueLine> scheduleOfValues(
    const std::vector<ContractValue>& values, const std::vector<Extra>& extras) {
    std::map<PieceOfWork, Money> works;
    for (const ContractValue& value : values)
        works[value.work] += value.price;
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

std::vector<ValueProgress> progressOf(const Contract& contract,
    const std::vector<ValueLine>& schedule, const std::vector<Extra>& extras) {
    std::vector<ValueProgress> progress;
    for (const ValueLine& line : schedule) {
        if (!line.key.extra)
            progress.push_back({line.key, shareDone(contract, line.key.work)});
        else if (isDone(extras, line.key.extra))
            progress.push_back({line.key, Percent::hundred()});
    }
    return progress;
}

} // namespace miterbook
