// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/schedule.h"

#include <algorithm>
#include <tuple>

namespace miterbook {

namespace {

/// The days that two dates have in common; not ok when there are none.
std::pair<Date, Date> inCommon(const HouseDate& a, const HouseDate& b) {
    const Date from = std::max(a.from, b.from);
    const Date to = std::min(a.lastDay(), b.lastDay());
    return from <= to ? std::pair(from, to) : std::pair(noDate, noDate);
}

std::string placeOf(const Book& book, Id<HouseDate> id) {
    const HouseDate* date = book.jobs.of<HouseDate>().find(id);
    const House* house = date ? book.house(date->house) : nullptr;
    return house ? house->name + " (" + std::string(word(date->kind)) + ')'
                 : std::string("a house");
}

std::string nameOf(const Book& book, Id<CrewMember> id) {
    const CrewMember* member = book.prices.of<CrewMember>().find(id);
    return member ? member->name : std::string("Somebody who has left the book");
}

} // namespace

std::vector<HouseDate> datesOf(const Book& book, Id<House> house) {
    std::vector<HouseDate> dates;
    for (const auto& [id, date] : book.jobs.of<HouseDate>()) {
        if (!house || date.house == house)
            dates.push_back(date);
    }
    std::ranges::stable_sort(dates, {}, &HouseDate::from);
    return dates;
}

std::vector<DateClash> clashes(const Book& book) {
    const auto dates = datesOf(book, {});
    std::vector<DateClash> found;
    for (std::size_t i = 0; i < dates.size(); ++i) {
        // By first day: those behind the last day of this one have no day in common with it.
        for (std::size_t j = i + 1; j < dates.size() && dates[j].from <= dates[i].lastDay(); ++j) {
            const auto [from, to] = inCommon(dates[i], dates[j]);
            if (!from.ok() || dates[i].house == dates[j].house)
                continue;
            for (const Id<CrewMember> who : dates[i].crew) {
                if (std::ranges::count(dates[j].crew, who) > 0)
                    found.push_back({dates[i].id, dates[j].id, who, from, to});
            }
        }
    }
    std::ranges::stable_sort(
        found, {}, [](const DateClash& clash) { return std::tuple(clash.from, clash.to); });
    return found;
}

std::string clashSentence(const Book& book, const DateClash& clash) {
    std::string days = "on " + isoDate(clash.from);
    if (clash.to != clash.from)
        days = "from " + isoDate(clash.from) + " to " + isoDate(clash.to);
    return nameOf(book, clash.who) + " is to be at " + placeOf(book, clash.first) + " and at "
        + placeOf(book, clash.second) + ' ' + days + '.';
}

std::string crewNames(const Book& book, const HouseDate& date) {
    std::string names;
    for (const Id<CrewMember> id : date.crew) {
        if (const CrewMember* member = book.prices.of<CrewMember>().find(id))
            names += (names.empty() ? "" : ", ") + member->name;
    }
    return names;
}

} // namespace miterbook
