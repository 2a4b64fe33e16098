// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/page_marks.h"
#include "printing/paper_fonts.h"

namespace miterbook {

/// Sets what a paper begins with, over a width in dots: the shop at the left, the paper's title at
/// the right, and the facts in columns under a line.
void setPaperHeading(
    const Paper& paper, const PaperFonts& fonts, double width, std::vector<Slab>& slabs);

} // namespace miterbook
