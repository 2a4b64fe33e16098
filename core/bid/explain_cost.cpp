// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"
#include "bid/explain.h"
#include "bid/trim_cost.h"

#include <map>

namespace miterbook {

namespace {

std::string feet(Length length) {
    return formatFeet(length) + " ft";
}

void addProfiles(std::vector<std::string>& sentences, PieceOfWork work,
    const std::vector<ProfileCost>& profiles, const PriceBook& prices) {
    const std::string& currency = prices.shop().currency;
    for (const ProfileCost& profile : profiles) {
        const Length own = profile.running.of(work);
        if (own == Length())
            continue;
        std::string sentence = std::string(prices.profileName(profile.profile)) + ": " + feet(own);
        if (own != profile.running.sum())
            sentence += " of " + feet(profile.running.sum()) + ", which cost "
                + formatMoney(profile.cost, currency) + ", come to "
                + formatMoney(profile.shares.of(work), currency);
        else
            sentence += " cost " + formatMoney(profile.cost, currency);
        sentences.push_back(sentence + '.');
    }
}

void addGoods(std::vector<std::string>& sentences, PieceOfWork work, const Takeoff& takeoff,
    const PriceBook& prices) {
    const std::string& currency = prices.shop().currency;
    std::map<PartUse, int> counts;
    for (const PartCount& part : takeoff.parts) {
        if (part.work == work)
            counts[part.use] += part.count;
    }
    for (const auto& [use, count] : counts) {
        const Part* part = prices.part(use);
        const std::string what = (part ? part->name : std::string(word(use))) + ": "
            + std::to_string(count);
        sentences.push_back(!part       ? what + ", without a price in the book."
                : part->builderSupplies ? what + ", supplied by the builder."
                                        : what + " at " + formatMoney(part->price, currency)
                    + " is " + formatMoney(part->price * count, currency) + '.');
    }
    for (const BoughtGoods& goods : takeoff.goods) {
        if (goods.work == work)
            sentences.push_back(
                "Bought for " + goods.source.name + ": " + formatMoney(goods.cost, currency) + '.');
    }
}

std::string profitSentence(const Estimate& estimate, std::string_view currency) {
    return "Profit: " + formatMoney(estimate.total.profit, currency) + ", which is "
        + formatPercent(estimate.markup) + " % markup on cost and " + formatPercent(estimate.margin)
        + " % margin on price.";
}

} // namespace

std::vector<std::string> explainPrice(
    const Estimate& estimate, const BidSetup& setup, std::string_view currency) {
    const WorkTotal& total = estimate.total;
    const auto money = [&](Money amount) { return formatMoney(amount, currency) + '.'; };
    const std::string sticks = setup.waste > Percent()
        ? "Material, running lengths and " + formatPercent(setup.waste) + " % waste"
        : "Material by the stick plan";
    std::vector<std::string> sentences{
        "Labour: " + formatHours(total.hours, 2) + " h at "
            + formatMoney(estimate.crewRate, currency)
            + " an hour, line by line: " + money(total.labour),
        sticks
            + (setup.delivery > Money() ? ", parts, goods, tax and delivery: "
                                        : ", parts, goods and tax: ")
            + money(total.material),
        "Consumables by the running length: " + money(total.consumables),
        "Overhead at " + formatPercent(setup.overhead) + " % of these: " + money(total.overhead),
    };
    if (total.contingency > Money())
        sentences.push_back("Contingency at " + formatPercent(setup.contingency)
            + " % of labour, material and consumables: " + money(total.contingency));
    if (total.allowances > Money())
        sentences.push_back("Allowances: " + money(total.allowances));
    sentences.push_back("Cost: " + money(total.cost()));
    if (estimate.pricing == Pricing::piecePrices) {
        sentences.emplace_back("The price is what your piece prices come to.");
        sentences.insert(sentences.end(), estimate.notes.begin(), estimate.notes.end());
    } else {
        sentences.push_back("Asked for: " + formatPercent(setup.profit) + " % "
            + std::string(word(setup.profitKind)) + '.');
    }
    sentences.push_back(profitSentence(estimate, currency));
    sentences.push_back("Price: " + money(total.price));
    return sentences;
}

std::vector<std::string> explainMaterial(const WorkTotal& work, const Takeoff& takeoff,
    const std::vector<StickPlan>& sticks, const PriceBook& prices, const BidSetup& setup) {
    std::vector<std::string> sentences;
    std::vector<std::string> problems; // said by the estimate already
    const Coverage coverage(takeoff, prices, setup);
    addProfiles(sentences, work.work,
        profileCosts(takeoff, sticks, prices, setup.waste, coverage, problems), prices);
    addGoods(sentences, work.work, takeoff, prices);
    const Percent tax = prices.terms().materialTax;
    if (tax > Percent())
        sentences.push_back("Tax on material at " + formatPercent(tax) + " % is in it.");
    if (setup.delivery > Money())
        sentences.push_back("Its share of " + formatMoney(setup.delivery, prices.shop().currency)
            + " for delivery is in it.");
    sentences.push_back("Together: " + formatMoney(work.material, prices.shop().currency) + '.');
    return sentences;
}

} // namespace miterbook
