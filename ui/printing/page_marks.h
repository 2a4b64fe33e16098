// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <memory>
#include <variant>
#include <vector>

namespace miterbook {

/// What a text is on a paper; its size and weight follow.
enum class TextRole { body, bold, small, smallBold, heading, shop, title };

/// A text set with its baseline beginning at a point.
struct TextMark {
    TextRole role = TextRole::body;
    QPointF at;
    QString text;
};

/// A straight black line.
struct LineMark {
    QPointF from;
    QPointF to;
    double thickness = 0;
};

/// A picture as large as its box.
struct PictureMark {
    QRectF box;
    QImage picture;
};

/// White over what was drawn before.
struct ClearMark {
    QRectF box;
};

using Mark = std::variant<TextMark, LineMark, PictureMark, ClearMark>;

/// Marks from their own top left corner, in dots of the device.
struct SetBlock {
    double height = 0;
    std::vector<Mark> marks;
};

/// A piece of a paper that stands on one page: a row, a line of text, a heading.
struct Slab {
    SetBlock block;
    std::shared_ptr<const SetBlock> atTop; ///< set instead where the slab begins a page
    std::shared_ptr<const SetBlock> head;  ///< set again above where the slab begins a page
    double before = 0;                     ///< white above, but not at the head of a page
    bool keepWithNext = false;
};

/// A block put on a page.
struct PlacedBlock {
    const SetBlock* block = nullptr;
    double top = 0;
};
using SetPage = std::vector<PlacedBlock>;

} // namespace miterbook
