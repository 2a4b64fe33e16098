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

/// The axis that a way goes along most: one inch of it.
PlanPoint mainWay(PlanPoint way) {
    const Length inch = Length::inches(1);
    const Length x = std::max(way.x, -way.x);
    const Length y = std::max(way.y, -way.y);
    if (x >= y)
        return {way.x < Length() ? -inch : inch, {}};
    return {{}, way.y < Length() ? -inch : inch};
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
    else
        return false;
    if (done)
        m_points.clear();
    update();
    return done;
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

bool PlanView::take(const QString& typed) {
    const QString words = typed.trimmed();
    if (words.isEmpty())
        return finishShape();
    const LengthUnit unit = m_desk.book().prices.shop().unit;
    // A room that was just drawn is named while the next one can be begun.
    const bool draws = m_tool == PlanTool::rectangle || m_tool == PlanTool::polygon;
    const bool names = draws && m_points.empty() && onlyOne(DrawnItem::Kind::room)
        && !words.at(0).isDigit();
    if (m_tool == PlanTool::choose || names)
        return takeForChosen(words);
    if (m_tool == PlanTool::window || m_tool == PlanTool::door) {
        const auto size = parseSize(utf8(words), unit);
        if (!size)
            m_desk.refuse(size.error());
        else
            m_choice.size = *size;
        sayHint();
        return size.ok();
    }
    if (m_tool == PlanTool::standing) {
        const auto length = parseLength(utf8(words), unit);
        if (!length)
            m_desk.refuse(length.error());
        else
            m_standingLength = *length;
        sayHint();
        return length.ok();
    }
    if (m_tool == PlanTool::count) {
        m_marking.name = utf8(words);
        select({});
        return true;
    }
    return takeForShape(words);
}

/// A rectangle by its two sides from the first corner or the cross hair; the next corner by its
/// distance in the direction of the last arrow key or of the pointer.
bool PlanView::takeForShape(const QString& typed) {
    const LengthUnit unit = m_desk.book().prices.shop().unit;
    if (m_tool == PlanTool::rectangle) {
        const auto walls = parseWalls(utf8(typed), unit);
        if (!walls || walls->size() < 3) {
            m_desk.refuse(
                walls ? badInput("Type the room's two sides, such as 12' x 14'6.") : walls.error());
            return false;
        }
        const auto outline = layOut(*walls, m_points.empty() ? m_cursor : m_points.front());
        if (!outline)
            m_desk.refuse(badInput("These walls do not come round to where they began."));
        return outline && addRoom(*outline);
    }
    const auto length = parseLength(utf8(typed), unit);
    if (!length) {
        m_desk.refuse(length.error());
        return false;
    }
    if (m_points.empty())
        m_points.push_back(m_cursor);
    const PlanPoint last = m_points.back();
    const PlanPoint way = m_byKeys || m_cursor == last ? m_direction : mainWay(m_cursor - last);
    const auto signedLength = [&](Length part) {
        return part == Length() ? Length() : part < Length() ? -*length : *length;
    };
    m_points.push_back(last + PlanPoint{signedLength(way.x), signedLength(way.y)});
    m_cursor = m_points.back();
    sayHint();
    update();
    return true;
}

bool PlanView::takeForChosen(const QString& typed) {
    if (const auto room = onlyOne(DrawnItem::Kind::room))
        return perform(roomSaid(*m_level, m_desk.ids(), *room, utf8(typed)));
    const auto opening = onlyOne(DrawnItem::Kind::opening);
    if (!opening) {
        m_desk.refuse(badInput("Choose one room, window or door first."));
        return false;
    }
    const auto size = parseSize(utf8(typed), m_desk.book().prices.shop().unit);
    if (size)
        return perform(openingResized(*m_level, m_desk.ids(), *opening, *size));
    m_desk.refuse(size.error());
    return false;
}

QString PlanView::typingHint() const {
    switch (m_tool) {
    case PlanTool::choose:
        return onlyOne(DrawnItem::Kind::opening) ? tr("Size: 3068 or 36 x 60")
                                                 : tr("Name of the room, or 12' x 14'");
    case PlanTool::rectangle:
        return tr("Sides: 12' x 14'6");
    case PlanTool::polygon:
    case PlanTool::area:
    case PlanTool::run:
        return tr("Length to the next corner");
    case PlanTool::window:
    case PlanTool::door:
        return tr("Size: 3068 or 36 x 60");
    case PlanTool::standing:
        return tr("Length along the wall");
    case PlanTool::count:
        return tr("What is counted");
    case PlanTool::tape:
        return tr("Known length: sets the sheet to scale");
    case PlanTool::saw:
        break;
    }
    return {};
}

void PlanView::sayHint() {
    const auto lengthText = [&] {
        const bool both = m_tool == PlanTool::tape && m_points.size() == 2;
        return wallText(
            distance(m_points[both ? 0 : m_points.size() - 1], both ? m_points[1] : m_cursor),
            m_desk.book());
    };
    QString hint;
    switch (m_tool) {
    case PlanTool::choose:
        if (m_look.wall >= 0)
            hint = tr("Wall %1 chosen: B base, K crown, S shoe on or off.").arg(m_look.wall + 1);
        else if (m_look.selected.empty())
            hint = tr("Click what you want to change, or draw a frame round several things.");
        else
            hint = tr("Drag or arrow keys move it; type a name or size; Delete takes it away.");
        break;
    case PlanTool::rectangle:
        hint = m_points.empty()
            ? tr("Drag from corner to corner, or click one and type 12' x 14'6.")
            : tr("%1 × %2").arg(
                wallText(distance(m_points[0], {m_cursor.x, m_points[0].y}), m_desk.book()),
                wallText(distance(m_points[0], {m_points[0].x, m_cursor.y}), m_desk.book()));
        break;
    case PlanTool::polygon:
    case PlanTool::area:
    case PlanTool::run:
        hint = m_points.empty() ? tr("Click the corners in order; Enter ends.")
                                : tr("%1 from the last corner; Enter ends.").arg(lengthText());
        break;
    case PlanTool::window:
    case PlanTool::door:
        hint = m_choice.size.width <= Length() ? tr("Type the size, then click walls.")
                                               : tr("%1 x %2: click on walls.")
                                                     .arg(text(formatLength(m_choice.size.width)),
                                                         text(formatLength(m_choice.size.height)));
        break;
    case PlanTool::standing:
        hint = tr("Draw along a wall where it has no base.");
        break;
    case PlanTool::count:
        hint = tr("Click once for each.");
        break;
    case PlanTool::tape:
        hint = m_points.empty() ? tr("Click two points.") : tr("%1 apart").arg(lengthText());
        break;
    case PlanTool::saw:
        hint = tr("Click where saw and bench stand.");
        break;
    }
    Q_EMIT said(hint);
}

} // namespace miterbook
