// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/snap.h"

#include <algorithm>

namespace miterbook {

namespace {

using Axis = Length PlanPoint::*;

/// The nearest of the lines offered so far along one axis.
class NearestLine {
public:
    NearestLine(Length at, Length reach)
        : m_at(at)
        , m_least(reach) {}

    void offer(Length line) {
        const Length away = std::max(line - m_at, m_at - line);
        if (away <= m_least && (!m_line || away < m_least)) {
            m_least = away;
            m_line = line;
        }
    }
    std::optional<Length> line() const { return m_line; }

private:
    Length m_at;
    Length m_least;
    std::optional<Length> m_line;
};

/// Offers the lines of an outline along one axis: its corners, and what stands a wall's thickness
/// outside of its faces across that axis.
void offerLines(const Outline& outline, Axis axis, Axis other, Length wall, NearestLine& nearest) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PlanPoint& a = outline[i];
        const PlanPoint& b = outline[i + 1 == outline.size() ? 0 : i + 1];
        nearest.offer(a.*axis);
        if (a.*axis != b.*axis || wall <= Length())
            continue;
        // The room is on the right of the way from a to b: down the sheet it lies to the left.
        const bool forward = b.*other > a.*other;
        const bool outwardPlus = (axis == &PlanPoint::x) == forward;
        nearest.offer(outwardPlus ? a.*axis + wall : a.*axis - wall);
    }
}

std::optional<Length> lineNear(Length at, Axis axis, Axis other, const SnapTo& to) {
    NearestLine nearest(at, to.reach);
    for (const PlanPoint& corner : to.before)
        nearest.offer(corner.*axis);
    for (const Outline* outline : to.others)
        offerLines(*outline, axis, other, to.wall, nearest);
    return nearest.line();
}

Length stepped(Length at, Length step) {
    return step > Length() ? roundTo(at, step) : at;
}

/// The move along one axis by which some corner of the outline meets a line.
Length moveNear(const Outline& outline, Length by, Axis axis, Axis other, const SnapTo& to) {
    Length best = stepped(by, to.step);
    Length least = to.reach;
    bool found = false;
    for (const PlanPoint& corner : outline) {
        const Length at = corner.*axis + by;
        const auto line = lineNear(at, axis, other, to);
        if (!line)
            continue;
        const Length away = std::max(*line - at, at - *line);
        if (!found || away < least) {
            found = true;
            least = away;
            best = *line - corner.*axis;
        }
    }
    return best;
}

} // namespace

Snapped snapped(PlanPoint point, const SnapTo& to) {
    Snapped result;
    const auto x = lineNear(point.x, &PlanPoint::x, &PlanPoint::y, to);
    const auto y = lineNear(point.y, &PlanPoint::y, &PlanPoint::x, to);
    result.toX = x.has_value();
    result.toY = y.has_value();
    result.point = {x ? *x : stepped(point.x, to.step), y ? *y : stepped(point.y, to.step)};
    return result;
}

PlanPoint snappedMove(const Outline& outline, PlanPoint by, const SnapTo& to) {
    return {moveNear(outline, by.x, &PlanPoint::x, &PlanPoint::y, to),
        moveNear(outline, by.y, &PlanPoint::y, &PlanPoint::x, to)};
}

} // namespace miterbook
