// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/paper.h"
#include "printing/page_marks.h"
#include "printing/paper_fonts.h"

#include <QRectF>

namespace miterbook {

/// A paper set for pages of one size, in dots of a device.
class SetPaper {
public:
    /// `area`: what may be printed on inside the margins.
    SetPaper(const Paper& paper, const PaperFonts& fonts, QSizeF area);
    SetPaper(const SetPaper&) = delete;
    SetPaper& operator=(const SetPaper&) = delete;

    int pageCount() const { return static_cast<int>(m_pages.size()); }
    /// The blocks of a page from 0, top to bottom.
    const SetPage& page(int index) const { return m_pages[static_cast<std::size_t>(index)]; }
    /// What is left of a page below its blocks and above its footer.
    QRectF roomBelow(int index) const;
    /// The line at the foot of a page: what the paper is, and which page of how many. Nothing
    /// on a sheet of labels.
    SetBlock footer(int index) const;

private:
    std::vector<Slab> slabs(const Paper& paper) const;

    const PaperFonts& m_fonts;
    QSizeF m_area;
    double m_height; ///< of a page without its footer
    bool m_hasFooter;
    QString m_footer;
    std::vector<Slab> m_slabs;
    std::vector<SetPage> m_pages; ///< point into m_slabs
};

} // namespace miterbook
