// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/drawings.h"
#include "printing/page_marks.h"
#include "printing/paper_fonts.h"

#include <QSizeF>

namespace miterbook {

/// A floor on one page: at the largest usual scale that fits, which is said, else to fit. Labels
/// that would lie over each other are moved aside; none is left out.
void setFloor(
    const PaperFloor& floor, const PaperFonts& fonts, QSizeF area, std::vector<Slab>& slabs);

} // namespace miterbook
