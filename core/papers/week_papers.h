// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

// What the papers of a week have in common. They are of the whole shop: of a job only book and date
// count.

/// The first day of the week that the paper's date is in.
Date paperWeek(const PaperJob& job);
void addWeek(Paper& paper, const PaperJob& job);

/// The same without house and plan.
inline PaperJob shopWide(const PaperJob& job) {
    return {job.book, {}, {}, {}, job.date};
}

} // namespace miterbook
