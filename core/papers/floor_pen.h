// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/drawings.h"
#include "papers/plain_text.h"
#include "plan/leaves.h"

namespace miterbook {

/// A place or a way on a floor, in inches of the house.
struct FloorPoint {
    double x = 0;
    double y = 0;
    friend FloorPoint operator+(FloorPoint a, FloorPoint b) { return {a.x + b.x, a.y + b.y}; }
    friend FloorPoint operator-(FloorPoint a, FloorPoint b) { return {a.x - b.x, a.y - b.y}; }
    friend FloorPoint operator*(FloorPoint a, double n) { return {a.x * n, a.y * n}; }
};

/// Draws a floor in inches of the house; the floor itself is measured from its corner.
class FloorPen {
public:
    static constexpr double wall = 1.3; ///< points
    static constexpr double thin = 0.6;
    static constexpr double bare = 0.5;

    FloorPen(PaperFloor& floor, FloorPoint corner)
        : m_floor(floor)
        , m_corner(corner) {}

    void line(FloorPoint a, FloorPoint b, double weight) {
        a = a - m_corner;
        b = b - m_corner;
        m_floor.lines.push_back({a.x, a.y, b.x, b.y, weight});
    }
    void label(FloorPoint at, const std::string& text, bool bold) {
        at = at - m_corner;
        if (!text.empty())
            m_floor.labels.push_back({at.x, at.y, oneLine(text), bold});
    }

private:
    PaperFloor& m_floor;
    FloorPoint m_corner;
};

/// What shuts an opening whose middle is `at` on its room's face of the wall: `half` is the way
/// along the wall to its right jamb, `out` the way through the wall. Leaves swing into the room.
void drawLeaves(
    FloorPen& pen, const Opening& opening, FloorPoint at, FloorPoint half, FloorPoint out);

} // namespace miterbook
