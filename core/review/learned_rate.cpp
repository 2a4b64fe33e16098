// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/learned_rate.h"

#include "review/student_t.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace miterbook {

namespace {

/// A sighting on the scale of logarithms.
struct LogSighting {
    double value = 0;  ///< ln minutes a unit, put up from the middle of houses to their mean
    double spread = 0; ///< standard deviation about the shop's ln rate
};

/// The spread of a house: a job that the book gives few minutes says less. By the book's minutes,
/// not the entry's, so that an absurd entry cannot make itself important.
std::vector<LogSighting> logsOf(
    const std::vector<RateSighting>& sightings, double bookRate, const RateBelief& belief) {
    const double toMean = belief.houseSpread * belief.houseSpread / 2;
    std::vector<LogSighting> logs;
    for (const RateSighting& sighting : sightings) {
        assert(sighting.quantity > Quantity() && sighting.minutes > 0);
        const double expected = sighting.quantity.toDouble() * bookRate;
        logs.push_back({std::log(sighting.rate()) + toMean,
            belief.houseSpread * std::sqrt(1 + belief.smallJob / expected)});
    }
    return logs;
}

/// What pulls the rate up at `at`; falls as `at` rises, and is 0 at the mode.
double pullAt(
    double at, double book, const std::vector<LogSighting>& logs, const RateBelief& belief) {
    double sum = (book - at) / (belief.bookSpread * belief.bookSpread);
    for (const LogSighting& log : logs) {
        const double off = (log.value - at) / log.spread;
        sum += std::clamp(off, -believedUpTo, believedUpTo) / log.spread;
    }
    return sum;
}

/// The mode under a further `push`, by halving: the pull falls steadily, so there is one.
double modeOf(
    double book, const std::vector<LogSighting>& logs, const RateBelief& belief, double push = 0) {
    // The book alone holds back a push within this reach.
    const double reach = std::abs(push) * belief.bookSpread * belief.bookSpread;
    double low = book;
    double high = book;
    for (const LogSighting& log : logs) {
        low = std::min(low, log.value);
        high = std::max(high, log.value);
    }
    low -= reach;
    high += reach;
    for (int i = 0; i < 80; ++i) {
        const double middle = (low + high) / 2;
        (pullAt(middle, book, logs, belief) + push > 0 ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace

LearnedRate learnRate(MinutesPerUnit bookRate, const std::vector<RateSighting>& sightings,
    const RateBelief& belief, double sureness) {
    assert(bookRate.hundredths() > 0);
    const double book = std::log(bookRate.toDouble());
    const std::vector<LogSighting> logs = logsOf(sightings, bookRate.toDouble(), belief);
    const double mode = modeOf(book, logs, belief);

    LearnedRate learned;
    learned.minutes = std::exp(mode);
    learned.houses = static_cast<int>(logs.size());
    // Squares of the believed part of each distance, in units of the spread assumed; the belief
    // stands for priorHouses houses that scatter as assumed.
    double squares = belief.priorHouses;
    double weight = 1 / (belief.bookSpread * belief.bookSpread);
    for (const LogSighting& log : logs) {
        const double off = std::abs(log.value - mode) / log.spread;
        const double believed = std::min(off, believedUpTo);
        squares += believed * believed;
        learned.odd += off > 2 * believedUpTo ? 1 : 0;
        weight += (off > 0 ? believed / off : 1) / (log.spread * log.spread);
    }
    learned.freedom = belief.priorHouses + static_cast<double>(logs.size());
    const double scale = std::sqrt(squares / learned.freedom);
    learned.houseSpread = belief.houseSpread * scale;
    const double reach = studentQuantile((1 + sureness) / 2, learned.freedom) * scale
        / std::sqrt(weight);
    learned.low = std::exp(mode - reach);
    learned.high = std::exp(mode + reach);
    return learned;
}

double mostMoved(
    MinutesPerUnit bookRate, const std::vector<RateSighting>& others, const RateBelief& belief) {
    const double book = std::log(bookRate.toDouble());
    const std::vector<LogSighting> logs = logsOf(others, bookRate.toDouble(), belief);
    const double mode = modeOf(book, logs, belief);
    const double hardest = believedUpTo / belief.houseSpread; // push of the most absurd entry
    const double up = modeOf(book, logs, belief, hardest) - mode;
    const double down = mode - modeOf(book, logs, belief, -hardest);
    return std::exp(std::max(up, down));
}

std::vector<RateTrendPoint> rateTrend(MinutesPerUnit bookRate, std::vector<RateSighting> sightings,
    const RateBelief& belief, double sureness) {
    std::ranges::stable_sort(sightings, {}, &RateSighting::date);
    std::vector<RateTrendPoint> trend;
    std::vector<RateSighting> soFar;
    for (const RateSighting& sighting : sightings) {
        soFar.push_back(sighting);
        trend.push_back(
            {sighting.date, sighting.rate(), learnRate(bookRate, soFar, belief, sureness)});
    }
    return trend;
}

} // namespace miterbook
