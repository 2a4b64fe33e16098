// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/page_size.h"
#include "printing/paper_painter.h"

#include <QBuffer>
#include <QPdfWriter>

#include <algorithm>

namespace miterbook {

/// A PDF that nobody keeps, to set papers for.
class Device {
public:
    explicit Device(PageSize size = PageSize::letter) {
        m_buffer.open(QIODevice::WriteOnly);
        setPage(m_writer, size);
    }
    QPdfWriter& operator*() { return m_writer; }
    QSizeF area() { return m_writer.pageLayout().paintRectPixels(m_writer.resolution()).size(); }

private:
    QBuffer m_buffer;
    QPdfWriter m_writer{&m_buffer};
};

/// The texts of one page, top to bottom, left to right.
inline std::vector<TextMark> textsOf(const SetPage& page) {
    std::vector<TextMark> texts;
    for (const PlacedBlock& placed : page) {
        for (const Mark& mark : placed.block->marks) {
            if (const auto* text = std::get_if<TextMark>(&mark)) {
                texts.push_back(*text);
                texts.back().at.ry() += placed.top;
            }
        }
    }
    std::ranges::stable_sort(texts, [](const TextMark& a, const TextMark& b) {
        return std::pair(a.at.y(), a.at.x()) < std::pair(b.at.y(), b.at.x());
    });
    return texts;
}

/// How many texts of a page begin with a word.
inline std::ptrdiff_t countOf(const SetPage& page, const QString& word) {
    const std::vector<TextMark> texts = textsOf(page);
    return std::ranges::count_if(
        texts, [&](const TextMark& mark) { return mark.text.startsWith(word); });
}

} // namespace miterbook
