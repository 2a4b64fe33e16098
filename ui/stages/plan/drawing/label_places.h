// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QSizeF>

#include <optional>
#include <unordered_map>
#include <vector>

namespace miterbook {

/// Keeps labels of a drawing from lying over each other. What was placed first stays.
class LabelPlaces {
public:
    /// The first of the centres at which a label of that size lies over no other, and where
    /// `within` is said, in there; it is then taken.
    std::optional<QRectF> place(
        QSizeF size, const std::vector<QPointF>& centres, const QRectF& within = {});
    /// Keeps a rectangle free of labels.
    void keepFree(const QRectF& rect);

private:
    bool isFree(const QRectF& rect) const;
    template <class Fn>
    static void forEachCell(const QRectF& rect, Fn&& fn);

    std::vector<QRectF> m_rects;
    std::unordered_map<long long, std::vector<std::size_t>> m_cells; ///< rectangles by grid cell
};

} // namespace miterbook
