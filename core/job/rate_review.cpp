// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/rate_review.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "book/said_words.h"
#include "book/starter_book.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace miterbook {

namespace {

MinutesPerUnit minutesOf(double minutes) {
    return MinutesPerUnit::hundredths(std::max<std::int64_t>(1, std::llround(minutes * 100)));
}

const PriceBook& starters() {
    static const PriceBook book = [] {
        IdSource ids;
        return starterBook(ids);
    }();
    return book;
}

/// Where learning starts: a learned rate goes back to the starter it came from.
MinutesPerUnit startOf(const LabourRate& held) {
    const LabourRate* starter = held.origin == Origin::learned ? starters().rate(held.task)
                                                               : nullptr;
    const MinutesPerUnit minutes = starter ? starter->minutes : held.minutes;
    return std::max(minutes, MinutesPerUnit::hundredths(1));
}

std::vector<ConditionRate> ratesApart(
    const Book& book, const TaskRate& rate, const std::vector<TaskSighting>& ofTask) {
    std::set<Conditions> kinds;
    for (const TaskSighting& sighting : ofTask)
        kinds.insert(sighting.conditions);
    std::vector<ConditionRate> apart;
    for (const Conditions conditions : kinds) {
        const auto seen = rateSightings(ofTask, rate.held.task, conditions);
        const MinutesPerUnit start = minutesOf(
            rate.starter.toDouble() * book.prices.factor(conditions));
        apart.push_back({conditions, static_cast<int>(seen.size()), start, learnRate(start, seen)});
    }
    return apart.size() > 1 ? apart : std::vector<ConditionRate>();
}

} // namespace

MinutesPerUnit TaskRate::learnedMinutes() const {
    return minutesOf(learned.minutes);
}

std::string TaskRate::evidence(LengthUnit written) const {
    const auto minutes = [&](MinutesPerUnit counted) {
        return formatMinutesPerUnit(minutesSaid(counted, unitOf(held.task), written));
    };
    const auto latest = std::ranges::max_element(sightings, {}, &RateSighting::date);
    const std::string until = latest == sightings.end() ? std::string()
                                                        : " to " + isoDate(latest->date);
    return "learned from " + std::to_string(learned.houses)
        + (learned.houses == 1 ? " house" : " houses") + until + ": "
        + minutes(minutesOf(learned.low)) + " to " + minutes(minutesOf(learned.high))
        + ", began with " + minutes(starter);
}

std::vector<TaskSighting> allSightings(const Book& book, const SoldTasks& sold) {
    std::map<Id<Plan>, std::vector<EstimateLine>> lines;
    for (const auto& [id, task] : sold)
        lines[task.plan].push_back(estimateLine(task));
    std::vector<TaskSighting> all;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        const auto bid = lines.find(house.work);
        if (!isFinished(house) || bid == lines.end())
            continue;
        const auto seen = taskSightings(
            id, house.finished, bid->second, book.time.summedEntries(id));
        all.insert(all.end(), seen.begin(), seen.end());
    }
    return all;
}

std::vector<TaskRate> taskRates(const Book& book, const std::vector<TaskSighting>& sightings) {
    std::map<Task, std::vector<TaskSighting>> byTask;
    for (const TaskSighting& sighting : sightings)
        byTask[sighting.task].push_back(sighting);
    std::vector<TaskRate> rates;
    for (const auto& [task, ofTask] : byTask) {
        const LabourRate* held = book.prices.rate(task);
        if (!held)
            continue;
        TaskRate& rate = rates.emplace_back();
        rate.held = *held;
        rate.starter = startOf(*held);
        rate.sightings = rateSightings(ofTask, task);
        rate.learned = learnRate(rate.starter, rate.sightings);
        rate.apart = ratesApart(book, rate, ofTask);
    }
    return rates;
}

std::vector<RateTrendPoint> trendOf(const TaskRate& rate, std::size_t points) {
    std::vector<RateSighting> sightings = rate.sightings;
    std::ranges::stable_sort(sightings, {}, &RateSighting::date);
    std::vector<RateTrendPoint> trend;
    std::vector<RateSighting> soFar;
    std::size_t told = 0;
    for (std::size_t i = 0; i < sightings.size(); ++i) {
        soFar.push_back(sightings[i]);
        const bool last = i + 1 == sightings.size();
        if (!last && i * points < told * sightings.size())
            continue;
        ++told;
        trend.push_back({sightings[i].date, sightings[i].rate(), learnRate(rate.starter, soFar)});
    }
    return trend;
}

Edit acceptRateEdit(const Book& book, const TaskRate& rate) {
    LabourRate accepted = rate.held;
    accepted.minutes = rate.learnedMinutes();
    accepted.origin = Origin::learned;
    const LengthUnit written = book.prices.shop().unit;
    accepted.source = rate.evidence(written);
    return putEdit(book,
        "Accept "
            + formatMinutesPerUnit(minutesSaid(accepted.minutes, unitOf(accepted.task), written))
            + " minutes for " + std::string(said(accepted.task, written)),
        accepted);
}

} // namespace miterbook
