// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/alternates.h"
#include "papers/job_papers.h"

#include <vector>

namespace miterbook {

/// What a bid is called when it goes out of hand.
struct BidHeading {
    int number = 0; ///< 0: a draft, which has none
    int revision = 1;
    Date inPlaceOf = noDate; ///< of the revision that it follows
};

/// The bid as bidPaper(), with its number where it has one and alternates that have been reckoned.
Paper bidPaper(const PaperJob& job, const JobFigures& figures, const BidHeading& heading,
    const std::vector<Alternate>& alternates);

/// How long a bid of the job's date stands; no date where the terms set no days.
Date validUntil(const PaperJob& job);

} // namespace miterbook
