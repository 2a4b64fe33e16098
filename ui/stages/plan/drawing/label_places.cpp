// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/label_places.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

constexpr double labelCell = 64; // pixels

} // namespace

template <class Fn>
void LabelPlaces::forEachCell(const QRectF& rect, Fn&& fn) {
    const auto at
        = [](double value) { return static_cast<long long>(std::floor(value / labelCell)); };
    for (long long x = at(rect.left()); x <= at(rect.right()); ++x) {
        for (long long y = at(rect.top()); y <= at(rect.bottom()); ++y)
            fn(x * 1'000'003LL + y);
    }
}

bool LabelPlaces::isFree(const QRectF& rect) const {
    bool free = true;
    forEachCell(rect, [&](long long cell) {
        const auto it = m_cells.find(cell);
        if (!free || it == m_cells.end())
            return;
        free = std::ranges::none_of(
            it->second, [&](std::size_t i) { return m_rects[i].intersects(rect); });
    });
    return free;
}

void LabelPlaces::keepFree(const QRectF& rect) {
    const std::size_t at = m_rects.size();
    m_rects.push_back(rect);
    forEachCell(rect, [&](long long cell) { m_cells[cell].push_back(at); });
}

std::optional<QRectF> LabelPlaces::place(
    QSizeF size, const std::vector<QPointF>& centres, const QRectF& within) {
    for (const QPointF& centre : centres) {
        const QRectF rect(centre - QPointF(size.width() / 2, size.height() / 2), size);
        if ((within.isNull() || within.contains(rect)) && isFree(rect)) {
            keepFree(rect);
            return rect;
        }
    }
    return std::nullopt;
}

} // namespace miterbook
