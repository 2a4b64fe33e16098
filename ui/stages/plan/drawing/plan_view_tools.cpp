// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_view.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "plan/redraw.h"
#include "plan/room_text.h"

#include <cmath>

namespace miterbook {

namespace {

constexpr double openingReach = 16; // pixels from a wall within which a click means it

bool needsThree(PlanTool tool) {
    return tool == PlanTool::polygon || tool == PlanTool::area;
}

} // namespace

void PlanView::clickWith(PlanPoint point) {
    switch (m_tool) {
    case PlanTool::choose:
        break;
    case PlanTool::rectangle:
        if (m_points.empty()) {
            m_points = {point};
        } else {
            const PlanPoint a = m_points.front();
            addRoom({a, {point.x, a.y}, point, {a.x, point.y}});
        }
        break;
    case PlanTool::polygon:
    case PlanTool::run:
    case PlanTool::area:
    case PlanTool::stair:
        addPoint(point);
        break;
    case PlanTool::window:
    case PlanTool::door:
        placeOpening(point);
        break;
    case PlanTool::standing:
        if (m_points.empty())
            m_points = {point};
        else
            standHere(m_points.front(), point);
        break;
    case PlanTool::count:
        markHere(point);
        break;
    case PlanTool::tape:
        if (m_points.size() >= 2)
            m_points.clear();
        m_points.push_back(point);
        if (m_points.size() == 2)
            Q_EMIT taped(distance(m_points[0], m_points[1]).toInches());
        break;
    case PlanTool::saw:
        Q_EMIT sawPut(point);
        break;
    }
    sayHint();
    update();
}

/// A click on the first corner closes the outline.
void PlanView::addPoint(PlanPoint point) {
    const bool closes = needsThree(m_tool) && m_points.size() >= 3 && point == m_points.front();
    if (closes) {
        finishShape();
        return;
    }
    if (m_points.empty() || point != m_points.back())
        m_points.push_back(point);
}

bool PlanView::finishShape() {
    const std::vector<PlanPoint> points = m_points;
    bool done = false;
    if (m_tool == PlanTool::polygon && points.size() >= 3)
        done = addRoom(points);
    else if (m_tool == PlanTool::run && points.size() >= 2)
        done = perform(marksAdded(*m_level, m_desk.ids(), m_marking, MarkKind::run, points));
    else if (m_tool == PlanTool::area && points.size() >= 3)
        done = perform(marksAdded(*m_level, m_desk.ids(), m_marking, MarkKind::area, points));
    else if (m_tool == PlanTool::stair && points.size() >= 2)
        done = drawStair(points);
    else
        return false;
    if (done)
        m_points.clear();
    update();
    return done;
}

/// The stair that is chosen and has no place gets this one; else there is a new one.
bool PlanView::drawStair(const std::vector<PlanPoint>& points) {
    const auto chosen = onlyOne(DrawnItem::Kind::stair);
    const Stair* there = chosen ? m_level->stair(*chosen) : nullptr;
    const bool isNew = !there || !there->walkLine.empty();
    if (!perform(stairDrawn(*m_level, m_desk.ids(), chosen, points)))
        return false;
    if (isNew)
        select({{DrawnItem::Kind::stair, m_desk.ids().last()}});
    return true;
}

bool PlanView::addRoom(const Outline& outline) {
    m_fitted = true; // the sheet stays where it is while rooms come
    if (!perform(roomAdded(*m_level, m_desk.ids(), tidied(outline))))
        return false;
    m_points.clear();
    select({{DrawnItem::Kind::room, m_desk.ids().last()}});
    Q_EMIT nameWanted();
    return true;
}

void PlanView::placeOpening(PlanPoint point) {
    const auto hit = m_level->wallAt(point, m_frame.length(openingReach));
    if (!hit) {
        m_desk.refuse(badInput("Click on a wall of a drawn room: a window or door stands in one."));
        return;
    }
    if (perform(openingPlaced(*m_level, m_desk.ids(), m_choice, rowKey(*hit->room), hit->place)))
        select({{DrawnItem::Kind::opening, m_desk.ids().last()}});
}

/// The first mark makes the line of the takeoff, further ones add to it while it is chosen.
void PlanView::markHere(PlanPoint point) {
    const auto chosen = onlyOne(DrawnItem::Kind::work);
    const OtherWork* work = chosen ? m_level->work(*chosen) : nullptr;
    if (work && work->marked == MarkKind::count) {
        perform(markAppended(*m_level, m_desk.ids(), *chosen, point));
        return;
    }
    if (perform(marksAdded(*m_level, m_desk.ids(), m_marking, MarkKind::count, {point})))
        select({{DrawnItem::Kind::work, m_desk.ids().last()}});
}

/// From one point to another along the wall nearest to the first; a click alone puts the length
/// that was typed, its middle there.
void PlanView::standHere(PlanPoint from, PlanPoint to) {
    m_points.clear();
    // By the middle: a pull may begin in a corner, where two walls are as near.
    const PlanPoint middle{(from.x + to.x) / 2, (from.y + to.y) / 2};
    const auto hit = m_level->wallAt(middle, m_frame.length(openingReach));
    if (!hit) {
        m_desk.refuse(badInput("Draw along a wall of a drawn room."));
        return;
    }
    const Length wall = hit->room->walls[hit->place.wall].length;
    const PlanPoint first = hit->room->outline[hit->place.wall];
    const PlanPoint way = pointOn(hit->room->outline, hit->place.wall, Length::feet(10)) - first;
    const auto along = [&](PlanPoint point) {
        const PlanPoint off = point - first;
        return Length::fromInches(
            (off.x.toInches() * way.x.toInches() + off.y.toInches() * way.y.toInches()) / 120.0);
    };
    Length a = roundTo(along(from), step());
    Length b = roundTo(along(to), step());
    if (a == b || distance(from, to) < m_frame.length(4)) {
        if (m_standingLength <= Length()) {
            m_desk.refuse(badInput("Draw along the wall, or type a length first and then click."));
            return;
        }
        a = hit->place.along - m_standingLength / 2;
        b = a + m_standingLength;
        const Length shift = a < Length() ? -a : b > wall ? wall - b : Length();
        a += shift;
        b += shift;
    }
    const Length start = std::max(std::min(a, b), Length());
    const Length end = std::min(std::max(a, b), wall);
    const auto room = rowKey(*hit->room); // the level is drawn anew by what is performed
    perform(breakAdded(*m_level, m_desk.ids(), room,
        {static_cast<int>(hit->place.wall) + 1, start, end - start, m_standing}));
    select({{DrawnItem::Kind::room, room}});
}

} // namespace miterbook
