// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

/// Adds a boxed note "Not complete" with what keeps the paper from being right, so that nobody
/// sends it unknowingly: problems of the takeoff, the plan's elevation and options, the shop's
/// missing name, and those given. Nothing when there are none. Sentences that say the same are said
/// once.
void addIncomplete(Paper& paper, const PaperJob& job, const JobFigures& figures,
    const std::vector<std::string>& problems);

} // namespace miterbook
