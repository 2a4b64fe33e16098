// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"
#include "review/comparison.h"

#include <vector>

namespace miterbook {

/// What a house whose bid has been kept came to: its bid as it was won against its time, whether it
/// is finished or not. Nothing to hold it against: a result without works but those that took time.
HouseResult resultOf(const Book& book, const House& house);

/// The results of all finished houses with a kept bid, by the day they were finished. From what is
/// always in memory: no house need be opened.
std::vector<HouseResult> finishedResults(const Book& book);

/// What a group of a comparison is called: the plan's or builder's name, the year; "none" where the
/// houses have none.
std::string groupName(const Book& book, CompareBy by, std::int64_t key);

} // namespace miterbook
