// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/drawings.h"
#include "printing/page_marks.h"
#include "printing/paper_fonts.h"

#include <QSizeF>

namespace miterbook {

/// Bars to one scale over a width, each kept whole on a page; the first with the title.
void setBars(
    const PaperBars& bars, const PaperFonts& fonts, double width, std::vector<Slab>& slabs);

/// Sheets of labels, each as high as a page: where the labels lie on the sheet is reckoned from its
/// own corner, not from the margins. `height` is that of a page between the margins.
void setLabels(
    const PaperLabels& labels, const PaperFonts& fonts, double height, std::vector<Slab>& slabs);

} // namespace miterbook
