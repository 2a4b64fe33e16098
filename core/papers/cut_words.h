// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/cut_figures.h"
#include "papers/job_papers.h"

#include <string>
#include <vector>

namespace miterbook {

// How what is cut is said on the papers of the saw and on its page.

/// Lengths at the saw are said to 1/32 in at least.
LengthStyle sawStyle(const Shop& shop);
/// "miter/square", "miter/miter", "square".
std::string endsText(const SheetStop& stop);
/// "45°", "30° / 45°", "miter 31.6°, bevel 33.9°"; empty where both ends are square.
std::string angleText(const SheetStop& stop);
/// Degrees to a tenth, without a zero at the end.
std::string degreesText(double degrees);
/// "1–22, 30": numbers in order, three and more that follow each other as a range.
std::string numberRanges(std::vector<int> numbers);
/// "W1–W5, D2": the same for names that end in a number, in the order given.
std::string nameRanges(const std::vector<std::string>& names);
/// "2 each of W1–W5; W9 ×2 (reveals +1/64)": what is served, with what each reveal is moved by.
std::string servedText(const SawSheet& sheet, const SheetStop& stop, LengthStyle style);
/// "take up 3–9; go on with 1": sticks to begin, and those begun at a longer stop.
std::string sticksText(const SheetStop& stop);
/// A warning for a stop: past the saw's swing, or pieces too short for safe hands; else empty.
std::string stopWarning(const SawSheet& sheet, const SheetStop& stop, const Practice& practice,
    const Bench& bench, LengthStyle style);
/// A small difference to 1/64 in or 0.1 mm: "+1/64"; empty where it is less than half of that.
std::string fineText(Length length, LengthStyle style);
/// "+1/32" or "-1/32".
std::string signedLength(Length length, LengthStyle style);

/// Boxed words for saw and bench [29 CFR 1926.300 to .304; 1926.55; NIOSH; NTP].
Paragraph sawCaution();
Paragraph dustCaution();
Paragraph benchCaution();

/// House or plan, place, level and date on a paper of the saw.
void addSawFacts(Paper& paper, const PaperJob& job, const JobFigures& figures);
/// Stops of one level, or all where it is none.
std::vector<const SheetStop*> stopsOn(const SawSheet& sheet, Id<Level> level);

} // namespace miterbook
