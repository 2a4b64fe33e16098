// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"
#include "papers/job_papers.h"

namespace miterbook {

/// A house of one level with so many windows in five heights and three widths, every one measured a
/// little off the plan, and so many doors cased on both sides; rooms with base and crown.
struct LevelHouse {
    LevelHouse(int windows, int doors, int rooms = 0);

    JobFigures figures() const;
    PaperJob job() const;

    Id<Plan> plan{2};
    Id<House> house{3};
    Id<Level> level{11};
    Book book;
};

} // namespace miterbook
