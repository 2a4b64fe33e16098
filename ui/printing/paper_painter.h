// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/paper_setter.h"

#include <functional>

class QPagedPaintDevice;
class QPainter;

namespace miterbook {

/// Pages to print, from 1, both counted in; 0 and 0 is all.
struct PageRange {
    int from = 0;
    int to = 0;
};

/// Paints on what is left below the blocks of a paper's last page, in dots of the device.
using PaperBelow = std::function<void(QPainter& painter, const QRectF& room)>;

/// Paints a paper on the pages of a printer, a PDF or a preview, as that device is set up. Nobody
/// else knows pages.
class PaperPainter {
public:
    /// Sets the paper; the device must outlive the painter and keep its page.
    PaperPainter(const Paper& paper, QPagedPaintDevice& device, PaperBelow below = {});

    int pageCount() const { return m_set.pageCount(); }
    const SetPaper& set() const { return m_set; }
    /// Error: no font to print with, or a device that cannot be painted on (a path that cannot be
    /// written).
    Result<void> paint(PageRange range = {}) const;

private:
    void paintPage(QPainter& painter, int index) const;
    void paintBlock(QPainter& painter, const SetBlock& block, double top) const;

    QPagedPaintDevice& m_device;
    PaperFonts m_fonts;
    SetPaper m_set;
    PaperBelow m_below;
};

} // namespace miterbook
