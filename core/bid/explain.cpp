// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/explain.h"

#include "basics/number_text.h"

#include <array>

namespace miterbook {

namespace {

constexpr std::array conditionsInOrder = [] {
    std::array<Condition, Words<Condition>::list.size()> all{};
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i] = Words<Condition>::list[i].value;
    return all;
}();

std::string sourceSentence(const TaskCount& count) {
    std::string sentence = count.source.name + ": " + formatQuantity(count.quantity, 2) + ' '
        + std::string(word(unitOf(count.task)));
    if (!count.what.empty())
        sentence += " (" + count.what + ")";
    return sentence;
}

std::string rateSentence(const EstimateLine& line, const PriceBook& prices) {
    const LabourRate* rate = prices.rate(line.task);
    const std::string task(word(line.task));
    if (!rate)
        return "The book has no rate for " + task + ".";
    std::string sentence = "Rate for " + task + ": " + formatMinutesPerUnit(rate->minutes)
        + " min per " + std::string(word(unitOf(line.task))) + " (" + std::string(word(rate->origin));
    if (!rate->source.empty())
        sentence += ", " + rate->source;
    return sentence + ").";
}

void addFactors(
    std::vector<std::string>& sentences, const EstimateLine& line, const PriceBook& prices) {
    for (const Condition condition : conditionsInOrder) {
        if (!line.conditions.has(condition))
            continue;
        Conditions only;
        only.add(condition);
        const auto percent = Percent::basisPoints(
            static_cast<std::int64_t>(prices.factor(only) * 10'000 + 0.5));
        sentences.push_back("Factor for " + std::string(word(condition)) + ": "
            + formatPercent(percent) + " %.");
    }
}

} // namespace

std::vector<std::string> explainLine(const EstimateLine& line, const Takeoff& takeoff,
    const PriceBook& prices, Money crewRate) {
    std::vector<std::string> sentences;
    for (const TaskCount& count : takeoff.tasks) {
        if (count.work == line.work && count.task == line.task && count.conditions == line.conditions)
            sentences.push_back(sourceSentence(count));
    }
    sentences.push_back(rateSentence(line, prices));
    addFactors(sentences, line, prices);
    sentences.push_back(formatHours(line.hours, 2) + " h at " + formatMoney(crewRate)
        + " an hour is " + formatMoney(line.labour) + ".");
    return sentences;
}

std::vector<std::string> explainCrewRate(const PriceBook& prices) {
    std::vector<std::string> sentences;
    for (const auto& [id, member] : prices.of<CrewMember>()) {
        if (member.active)
            sentences.push_back(member.name + ": " + formatMoney(member.wage) + " an hour.");
    }
    for (const auto& [id, item] : prices.of<Burden>()) {
        std::string sentence = item.name + ": " + formatPercent(item.ofWages) + " % of wages";
        if (item.perYear > Money())
            sentence += " and " + formatMoney(item.perYear) + " a year each, over "
                + std::to_string(prices.terms().hoursPerYear) + " hours";
        sentences.push_back(sentence + '.');
    }
    sentences.push_back("An hour of the crew, on average, with burden: "
        + formatMoney(prices.crewRate()) + '.');
    return sentences;
}

std::vector<std::string> explainPrice(const Estimate& estimate, const BidSetup& setup) {
    const WorkTotal& total = estimate.total;
    std::vector<std::string> sentences{
        "Labour: " + formatHours(total.hours) + " h at " + formatMoney(estimate.crewRate) + " is "
            + formatMoney(total.labour) + '.',
        "Material from the stick plan, parts and tax: " + formatMoney(total.material) + '.',
        "Consumables by running foot: " + formatMoney(total.consumables) + '.',
        "Overhead at " + formatPercent(setup.overhead) + " % of these: "
            + formatMoney(total.overhead) + '.',
        "Cost: " + formatMoney(total.cost()) + '.',
    };
    if (estimate.pricing == Pricing::piecePrices)
        sentences.emplace_back("The price is the sum of the shop's piece prices.");
    else
        sentences.push_back("Asked for: " + formatPercent(setup.profit) + " % "
            + std::string(word(setup.profitKind)) + '.');
    sentences.push_back("Profit: " + formatMoney(total.profit) + ", which is "
        + formatPercent(estimate.markup) + " % markup on cost and "
        + formatPercent(estimate.margin) + " % margin on price.");
    return sentences;
}

} // namespace miterbook
