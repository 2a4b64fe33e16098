// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/floor_pen.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

/// A leaf that stands open at a right angle, with the way it swings as a few short lines.
void drawSwing(FloorPen& pen, FloorPoint hinge, FloorPoint shut, FloorPoint open) {
    pen.line(hinge, hinge + open, FloorPen::thin);
    constexpr int steps = 8;
    FloorPoint from = hinge + open;
    for (int i = 1; i <= steps; ++i) {
        const double turn = i * std::numbers::pi / 2 / steps;
        const FloorPoint to = hinge + open * std::cos(turn) + shut * std::sin(turn);
        pen.line(from, to, FloorPen::bare);
        from = to;
    }
}

void drawFold(FloorPen& pen, FloorPoint jamb, FloorPoint knee, FloorPoint latch) {
    pen.line(jamb, knee, FloorPen::thin);
    pen.line(knee, latch, FloorPen::thin);
}

} // namespace

void drawLeaves(
    FloorPen& pen, const Opening& opening, FloorPoint at, FloorPoint half, FloorPoint out) {
    const double wide = 2 * std::hypot(half.x, half.y);
    const FloorPoint in = out * (-wide / std::hypot(out.x, out.y));
    switch (leavesOf(opening)) {
    case Leaves::swing: {
        const FloorPoint hinge = opening.hand == Hand::right ? half : half * -1;
        drawSwing(pen, at + hinge, hinge * -2, in);
        break;
    }
    case Leaves::pair:
        drawSwing(pen, at - half, half, in * 0.5);
        drawSwing(pen, at + half, half * -1, in * 0.5);
        break;
    case Leaves::folding:
        drawFold(pen, at - half, at - half * 0.5 + in * 0.25, at);
        drawFold(pen, at + half, at + half * 0.5 + in * 0.25, at);
        break;
    case Leaves::sliding:
        pen.line(at - half + out * 0.35, at + half * 0.1 + out * 0.35, FloorPen::thin);
        pen.line(at - half * 0.1 + out * 0.65, at + half + out * 0.65, FloorPen::thin);
        break;
    case Leaves::pocket:
        pen.line(at - half * 2 + out * 0.5, at + out * 0.5, FloorPen::thin);
        break;
    case Leaves::none:
        break;
    }
}

} // namespace miterbook
