// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

/// A paper with the shop's letterhead, its footer and today's date; the facts are still to be
/// added.
Paper beginPaper(std::string name, std::string title, const PaperJob& job);

/// The picture of a sum out of the book; without content where the book has none of that sum.
PaperLogo logoOf(const PriceBook& prices, std::string_view sum);

/// Adds a fact unless its text is blank.
void addFact(Paper& paper, std::string what, const std::string& text);

// What a paper is about, each only where it is known.

/// Builder and, with `person`, whom to write to.
void addBuilder(Paper& paper, const PaperJob& job, bool person);
/// House or plan, elevation and options by name.
void addPlan(Paper& paper, const PaperJob& job);
/// Community, lot and address; `address` is what the paper calls it.
void addPlace(Paper& paper, const PaperJob& job, std::string address);
void addDate(Paper& paper, const PaperJob& job, std::string what, Date date);

/// Whether the elevation and options can be named: a house's stand with its builder's plan, which
/// may not have been opened.
bool variantsAreKnown(const PaperJob& job);

/// A heading and the lines under it; nothing is added when there are no lines.
void addSection(
    Paper& paper, std::string heading, Paragraph::Style style, std::vector<std::string> lines);

} // namespace miterbook
