// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/preview.h"

#include "printing/preview_dialog.h"

namespace miterbook {

void previewPaper(QWidget* parent, const Paper& paper, PageSize size, const PaperBelow& below) {
    PreviewDialog(paper, size, parent, below).exec();
}

} // namespace miterbook
