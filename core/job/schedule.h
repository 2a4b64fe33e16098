// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

#include <vector>

namespace miterbook {

/// Somebody who is to be at two houses on the same days.
struct DateClash {
    Id<HouseDate> first;
    Id<HouseDate> second;
    Id<CrewMember> who;
    Date from = noDate; ///< the days in common
    Date to = noDate;

    bool operator==(const DateClash&) const = default;
};

/// The dates of a house, of all houses for none; by first day.
std::vector<HouseDate> datesOf(const Book& book, Id<House> house);

/// Who is at two houses at once, by day. Two dates of one house are no clash.
std::vector<DateClash> clashes(const Book& book);

/// "Marta is to be at Lot 7 (first trip) and at Lot 9 (punch) from 2026-03-04 to 2026-03-06."
std::string clashSentence(const Book& book, const DateClash& clash);

/// "Marta, Jon": the crew of a date by name, those who have left the book left out.
std::string crewNames(const Book& book, const HouseDate& date);

} // namespace miterbook
