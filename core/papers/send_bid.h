// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/alternates.h"
#include "job/sent_bids.h"
#include "papers/job_papers.h"

namespace miterbook {

/// Sends the bid of a job as its paper says it on the job's date: number and revision, frozen paper
/// with its SHA-256 and the head of the bid, all in one Edit. The plan must be open; `figures` are
/// the thorough ones. Errors: nothing is priced, no date, the paper and the figures disagree.
Result<Edit> sendBid(const PaperJob& job, const JobFigures& figures, IdSource& ids);
/// The same with alternates that have been reckoned from those figures.
Result<Edit> sendBid(const PaperJob& job, const JobFigures& figures,
    const std::vector<Alternate>& alternates, IdSource& ids);

/// The frozen paper of a sent bid, whose plan must be open. Errors: it is not in the book, or its
/// text is not what its SHA-256 says.
Result<Paper> sentBidPaper(const Book& book, const SentBid& bid);

} // namespace miterbook
