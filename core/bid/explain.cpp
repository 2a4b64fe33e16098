// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/explain.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "book/said_words.h"

namespace miterbook {

namespace {

constexpr int mostSources = 12; // more would not be read

std::string sourceSentence(const TaskCount& count, LengthUnit written) {
    std::string sentence = count.source.name + ": "
        + amountText(count.quantity, unitOf(count.task), written);
    if (!count.what.empty())
        sentence += " (" + count.what + ")";
    return sentence + '.';
}

void addSources(std::vector<std::string>& sentences, const EstimateLine& line,
    const Takeoff& takeoff, LengthUnit written) {
    int matching = 0;
    for (const TaskCount& count : takeoff.tasks) {
        if (count.work == line.work && count.task == line.task
            && count.conditions == line.conditions && ++matching <= mostSources)
            sentences.push_back(sourceSentence(count, written));
    }
    if (matching > mostSources)
        sentences.push_back("And " + std::to_string(matching - mostSources) + " more; "
            + amountText(line.quantity, unitOf(line.task), written) + " in all.");
}

std::string rateSentence(const EstimateLine& line, const PriceBook& prices) {
    const LabourRate* rate = prices.rate(line.task);
    const LengthUnit written = prices.shop().unit;
    const std::string task(said(line.task, written));
    if (!rate)
        return "The book has no labour rate for \"" + task + "\".";
    std::string sentence = "Rate for " + task + ": "
        + formatMinutesPerUnit(minutesSaid(rate->minutes, unitOf(line.task), written))
        + " min for one " + unitText(unitOf(line.task), written) + " ("
        + std::string(word(rate->origin));
    if (!rate->source.empty())
        sentence += "; " + rate->source;
    return sentence + ").";
}

void addFactors(
    std::vector<std::string>& sentences, const EstimateLine& line, const PriceBook& prices) {
    for (const auto& [id, factor] : prices.of<Factor>()) {
        if (line.conditions.has(factor.condition))
            sentences.push_back("Factor for "
                + std::string(said(factor.condition, prices.shop().unit)) + ": "
                + formatPercent(factor.percent) + " %.");
    }
}

void addPiecePrice(
    std::vector<std::string>& sentences, const EstimateLine& line, const PriceBook& prices) {
    const std::string& currency = prices.shop().currency;
    const LengthUnit written = prices.shop().unit;
    const Unit unit = unitOf(line.task);
    const PiecePrice* piece = prices.piecePrice(line.task);
    if (line.piecePrice && piece)
        sentences.push_back("At your piece price"
            + std::string(line.byPiece ? ", as it is priced here, " : ", ")
            + amountText(line.quantity, unit, written) + " at " + currency
            + formatUnitPrice(priceSaid(piece->price, unit, written)) + " is "
            + formatMoney(*line.piecePrice, currency) + '.');
    if (!line.byPiece && line.price != Money())
        sentences.push_back("Priced by cost it brings its share, by labour, of what the "
                            "rest of the piece of work costs with overhead and profit: "
            + formatMoney(line.price, currency) + '.');
}

std::string burdenSentence(const Burden& item, const PriceBook& prices) {
    std::string sentence = item.name + ':';
    if (item.ofWages != Percent())
        sentence += ' ' + formatPercent(item.ofWages) + " % of wages";
    if (item.ofWages != Percent() && item.perYear != Money())
        sentence += " and";
    if (item.perYear != Money())
        sentence += ' ' + formatMoney(item.perYear, prices.shop().currency)
            + " a year for each, over " + std::to_string(prices.terms().hoursPerYear) + " hours";
    if (item.year != 0)
        sentence += " (" + std::to_string(item.year) + ')';
    return sentence + '.';
}

} // namespace

std::vector<std::string> explainLine(
    const EstimateLine& line, const Takeoff& takeoff, const PriceBook& prices, Money crewRate) {
    const std::string& currency = prices.shop().currency;
    std::vector<std::string> sentences;
    addSources(sentences, line, takeoff, prices.shop().unit);
    sentences.push_back(rateSentence(line, prices));
    addFactors(sentences, line, prices);
    sentences.push_back(formatHours(line.hours, 2) + " h at " + formatMoney(crewRate, currency)
        + " an hour is " + formatMoney(line.labour, currency) + '.');
    addPiecePrice(sentences, line, prices);
    return sentences;
}

std::vector<std::string> explainCrewRate(const PriceBook& prices) {
    const std::string& currency = prices.shop().currency;
    std::vector<std::string> sentences;
    for (const auto& [id, member] : prices.of<CrewMember>()) {
        if (member.active)
            sentences.push_back(
                member.name + ": " + formatMoney(member.wage, currency) + " an hour.");
    }
    if (sentences.empty())
        return {"Nobody active is in the crew, so an hour of labour costs nothing."};
    for (const Burden& item : prices.burdenInForce())
        sentences.push_back(burdenSentence(item, prices));
    sentences.push_back("An hour of one of the crew, on average, with burden: "
        + formatMoney(prices.crewRate(), currency) + '.');
    return sentences;
}

std::string crewDays(Hours hours, int people) {
    const std::int64_t perDay = std::int64_t(8) * 60 * people;
    const Quantity days = Quantity::thousandths(
        roundedQuotient(Wide(hours.minutes()) * 1000, perDay));
    const std::string text = formatQuantity(days);
    return text + (text == "1" ? " day" : " days") + " of 8 hours";
}

} // namespace miterbook
