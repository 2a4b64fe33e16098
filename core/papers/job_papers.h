// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "job/figures.h"
#include "papers/paper.h"

#include <functional>

namespace miterbook {

/// What a paper is for.
struct PaperJob {
    const Book& book;
    Id<Plan> plan;   ///< a builder's plan, or a house's own copy
    Id<House> house; ///< none when the paper is for a plan
    Id<Level> level; ///< none: all levels; only papers that go by level heed it
    Date date;
    Selection selection = {}; ///< of a plan's elevations and options; a house knows its own
    // For what is reckoned anew and takes long; both may be empty.
    std::function<bool()> stop = {}; ///< whether to end early: the paper is no good then
    std::function<void(int done, int all)> step = {}; ///< is told how far it is
};

// `figures` are those of `plan` with the same selection. To name a house's elevation and options
// its builder's plan (House::plan) has to be opened as well.

/// What the builder gets: counts, pieces of work and prices, inclusions, exclusions, terms. It
/// never shows cost, hours, rates or profit.
Paper bidPaper(const PaperJob& job, const JobFigures& figures);
/// How the bid comes about: what each piece of work costs and brings, hours task by task, sticks
/// profile by profile, profit both ways; for the shop alone.
Paper worksheetPaper(const PaperJob& job, const JobFigures& figures);
/// Quantities by level and room, each with its source; for the shop.
Paper takeoffPaper(const PaperJob& job, const JobFigures& figures);
/// To the yard: sticks by profile and length, parts; "no substitutions"; no prices of the bid.
Paper orderPaper(const PaperJob& job, const JobFigures& figures);
/// To the builder: what every plan of the plan's set comes to under each elevation, and what each
/// option adds or takes off. Plans of the set that are not opened are left out. It reckons every
/// one of them anew and heeds neither the figures nor the selection.
Paper priceSheetPaper(const PaperJob& job, const JobFigures& figures);

/// Each level drawn with room names and opening numbers, as they stand on the saw's papers.
Paper planPaper(const PaperJob& job, const JobFigures& figures);

// For the day at the saw; each heeds the level.

/// Openings in walking order with what was read, the rest to be filled in by hand.
Paper measurePaper(const PaperJob& job, const JobFigures& figures);
/// Stop settings by profile, longest first.
Paper sawSheetPaper(const PaperJob& job, const JobFigures& figures);
/// Every stick drawn to scale with what is cut from it.
Paper sticksPaper(const PaperJob& job, const JobFigures& figures);
/// A label for each piece that is not assembled yet.
Paper labelsPaper(const PaperJob& job, const JobFigures& figures);
/// Sets in the order of the bench, with clamps, times and joints.
Paper assemblyPaper(const PaperJob& job, const JobFigures& figures);

/// What a house came to against its bid; for the shop alone.
Paper houseReviewPaper(const PaperJob& job, const JobFigures& figures);

// Of the whole shop: of the job only book and date count, and the time entries of the date's week
// must have been opened.

/// The crew's week, person by person, to be signed.
Paper timeSheetPaper(const PaperJob& job, const JobFigures& figures);
/// What the week comes to for each of the crew, before deductions; for the shop alone.
Paper paySheetPaper(const PaperJob& job, const JobFigures& figures);
/// Finished houses by plan, builder and year, and what loses money; for the shop alone.
Paper planComparisonPaper(const PaperJob& job, const JobFigures& figures);

} // namespace miterbook
