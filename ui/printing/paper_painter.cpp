// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/paper_painter.h"

#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>

namespace miterbook {

namespace {

/// What lies inside the device's margins, in its dots.
QSizeF areaOf(const QPagedPaintDevice& device) {
    return device.pageLayout().paintRectPixels(device.logicalDpiX()).size();
}

} // namespace

PaperPainter::PaperPainter(const Paper& paper, QPagedPaintDevice& device, PaperBelow below)
    : m_device(device)
    , m_fonts(paper.type, device)
    , m_set(paper, m_fonts, areaOf(device))
    , m_below(std::move(below)) {
}

Result<void> PaperPainter::paint(PageRange range) const {
    if (const Result<void> fonts = PaperFonts::check(); !fonts)
        return fonts;
    QPainter painter;
    if (!painter.begin(&m_device))
        return Error{Fault::storage, "The printer or file cannot be written to."};
    const int first = range.from > 0 ? std::min(range.from, pageCount()) - 1 : 0;
    const int last = range.to > 0 ? std::min(range.to, pageCount()) - 1 : pageCount() - 1;
    for (int page = first; page <= last; ++page) {
        if (page > first && !m_device.newPage())
            return Error{Fault::storage, "The printer or file took no more pages."};
        paintPage(painter, page);
    }
    if (!painter.end())
        return Error{Fault::storage, "The printer or file did not take the pages."};
    return {};
}

void PaperPainter::paintPage(QPainter& painter, int index) const {
    painter.setPen(Qt::black);
    for (const PlacedBlock& placed : m_set.page(index))
        paintBlock(painter, *placed.block, placed.top);
    paintBlock(painter, m_set.footer(index), 0);
    if (m_below && index + 1 == pageCount())
        m_below(painter, m_set.roomBelow(index));
}

void PaperPainter::paintBlock(QPainter& painter, const SetBlock& block, double top) const {
    const QPointF down(0, top);
    for (const Mark& mark : block.marks) {
        if (const auto* text = std::get_if<TextMark>(&mark)) {
            painter.setFont(m_fonts.font(text->role));
            painter.drawText(text->at + down, text->text);
        } else if (const auto* line = std::get_if<LineMark>(&mark)) {
            painter.setPen(QPen(Qt::black, line->thickness, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(line->from + down, line->to + down);
        } else if (const auto* picture = std::get_if<PictureMark>(&mark)) {
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.drawImage(picture->box.translated(down), picture->picture);
        } else if (const auto* clear = std::get_if<ClearMark>(&mark)) {
            painter.fillRect(clear->box.translated(down), Qt::white);
        }
    }
}

} // namespace miterbook
