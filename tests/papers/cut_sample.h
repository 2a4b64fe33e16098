// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

/// A house of two levels at the saw: some openings measured, one out of square, one far from the
/// plan, some pieces cut and one spoiled; a room with base and sprung crown.
struct CutSample {
    Book book;
    JobFigures figures;
    Id<Plan> plan{2};
    Id<House> house{3};
    Id<Level> main{11};
    Id<Level> upper{12};

    CutSample();

    PaperJob job(Id<Level> level = {}) const;
    /// Reckons the figures anew after the book was changed.
    void refresh();

private:
    void addPrices();
    void addPlan();
    void addMeasures();
    void cutSome();
};

} // namespace miterbook
