// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/page_marks.h"
#include "printing/paper_fonts.h"

namespace miterbook {

/// Adds a line of text below what a block holds.
void setLine(
    SetBlock& block, TextRole role, double left, const QString& text, const PaperFonts& fonts);

// Blocks of a paper as slabs, over a width in dots.

/// Kept with what follows.
void setHeading(
    const QString& text, const PaperFonts& fonts, double width, std::vector<Slab>& slabs);
/// Neither the first nor the last line of a text stands alone on a page. Cautions are boxed.
void setParagraph(
    const Paragraph& paragraph, const PaperFonts& fonts, double width, std::vector<Slab>& slabs);
/// Two lines to sign on side by side, all on one page and never on one of their own.
void setSignatures(
    const Signatures& signatures, const PaperFonts& fonts, double width, std::vector<Slab>& slabs);

} // namespace miterbook
