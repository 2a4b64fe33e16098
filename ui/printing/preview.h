// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/shop.h"
#include "papers/paper.h"
#include "printing/paper_painter.h"

class QWidget;

namespace miterbook {

/// Shows a paper as it will be printed, from where it goes to a printer or a file. Returns when the
/// user closes it. `below` is painted on what is left of the last page.
void previewPaper(QWidget* parent, const Paper& paper, PageSize size, const PaperBelow& below = {});

} // namespace miterbook
