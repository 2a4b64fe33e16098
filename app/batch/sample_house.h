// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"
#include "batch/sample_draw.h"

#include <vector>

namespace miterbook {

/// A house of a sample year as its money looks at it.
struct SampleHouse {
    Id<House> id;
    int number = 0;      ///< from 0, in the order in which they were begun
    int builder = 0;     ///< the builder's place among all builders
    Date first = noDate; ///< day with hours
    Date last = noDate;
    bool underway = false;

    /// A day after so many per cent of the work's days.
    Date dayAt(int percent) const;
};

/// What an entry was: enough to say how far a house had come on a day.
using SampleEntries = std::vector<TimeEntry>;

/// The entries of a house that are in memory.
SampleEntries entriesOf(const Book& book, Id<House> house);

/// How much of a piece of work was done by the end of a day, by its hours, in steps of 5 %: of all
/// its hours where the house is finished, else of its bid and 95 % at most.
Percent sampleDone(const Book& book, const SampleHouse& house, const SampleEntries& entries,
    PieceOfWork work, Date day);

} // namespace miterbook
