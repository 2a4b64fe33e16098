// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/picture_rows.h"

#include "desk/text.h"
#include "plan/flight.h"
#include "plan/room_text.h"
#include "stages/plan/drawing/view_frame.h"

#include <QtMath>

namespace miterbook {

namespace {

constexpr double usualWall = 4.5;
constexpr double breakDepth = 24; // cabinets and tubs reach about so far into the room

QPolygonF polygonOf(const std::vector<PlanPoint>& points) {
    QPolygonF polygon;
    for (const PlanPoint& point : points)
        polygon.append(ViewFrame::inches(point));
    return polygon;
}

/// One inch along wall `i` of an outline.
QPointF alongWall(const QPolygonF& outline, qsizetype i) {
    const QPointF way = outline[(i + 1) % outline.size()] - outline[i];
    const double length = std::hypot(way.x(), way.y());
    return length > 0 ? way / length : QPointF(1, 0);
}

/// The way out of the room: to the left of the wall.
QPointF outOf(QPointF along) {
    return {along.y(), -along.x()};
}

/// A point well inside: the best of a grid over the outline, by its distance from all walls, sides
/// first because names are wide.
QPointF middleOf(const Room& room, const QPolygonF& outline) {
    const QRectF box = outline.boundingRect();
    if (room.outline.size() == 4
        && encloses(room.outline,
            {Length::fromInches(box.center().x()), Length::fromInches(box.center().y())}))
        return box.center();
    constexpr int steps = 9;
    QPointF best = outline.front();
    double most = -1;
    for (int i = 1; i < steps; ++i) {
        for (int k = 1; k < steps; ++k) {
            const QPointF at(
                box.left() + box.width() * i / steps, box.top() + box.height() * k / steps);
            const PlanPoint point{Length::fromInches(at.x()), Length::fromInches(at.y())};
            if (!encloses(room.outline, point))
                continue;
            const auto wall = nearestWall(room.outline, point);
            const double away = std::abs(wall->off.toInches());
            if (away > most) {
                most = away;
                best = at;
            }
        }
    }
    return best;
}

QString sizeOf(const Room& room, const Book& book) {
    const std::vector<Wall>& walls = room.walls;
    const bool rectangle = walls.size() == 4 && walls[0].length == walls[2].length
        && walls[1].length == walls[3].length && walls[0].angle == Angle::degrees(90);
    if (!rectangle)
        return text(floorText(qRound(areaOf(room.outline).toDouble()), book.prices.shop().unit));
    const bool across = room.outline[0].y == room.outline[1].y;
    return QStringLiteral("%1 × %2").arg(
        wallText(walls[across ? 0 : 1].length, book), wallText(walls[across ? 1 : 0].length, book));
}

void addBreak(const BaseBreak& each, PictureRoom& drawn) {
    const qsizetype wall = each.wall - 1;
    if (wall < 0 || wall >= drawn.outline.size())
        return;
    const QPointF along = alongWall(drawn.outline, wall);
    const QPointF in = -outOf(along) * (each.kind == BreakKind::fireplace ? 16 : breakDepth);
    const QPointF from = drawn.outline[wall] + along * each.from.toInches();
    const QPointF to = from + along * each.length.toInches();
    drawn.breaks.push_back({QPolygonF({from, to, to + in, from + in}), text(word(each.kind))});
}

} // namespace

PictureRoom pictureOfRoom(const Room& room, const Book& book) {
    PictureRoom drawn;
    drawn.key = rowKey(room);
    drawn.mark = markOfRow(room);
    drawn.outline = polygonOf(room.outline);
    drawn.middle = middleOf(room, drawn.outline);
    drawn.name = text(room.name.empty() ? room.mark : room.name);
    drawn.number = room.name.empty() ? QString() : text(room.mark);
    drawn.size = sizeOf(room, book);
    for (const Wall& wall : room.walls) {
        drawn.lengths.push_back(wallText(wall.length, book));
        drawn.bare.push_back(!wall.base);
    }
    for (const BaseBreak& each : room.breaks)
        addBreak(each, drawn);
    return drawn;
}

PictureOpening pictureOfOpening(
    const Opening& opening, const Room& room, const WallPlace& place, const Book& book) {
    const LengthStyle style = book.prices.shop().lengths();
    PictureOpening drawn;
    drawn.key = rowKey(opening);
    drawn.mark = markOfRow(opening);
    drawn.window = opening.isWindow();
    drawn.leaves = leavesOf(opening);
    drawn.hand = opening.hand;
    const QPolygonF outline = polygonOf(room.outline);
    drawn.along = alongWall(outline, static_cast<qsizetype>(place.wall));
    drawn.out = outOf(drawn.along);
    drawn.at = ViewFrame::inches(pointOn(room.outline, place.wall, place.along));
    drawn.width = std::max(opening.width.toInches(), 6.0);
    drawn.depth = opening.wallThickness > Length() ? opening.wallThickness.toInches() : usualWall;
    drawn.label = text(opening.mark);
    drawn.size = text(
        formatLength(opening.width, style) + " x " + formatLength(opening.height, style));
    return drawn;
}

std::optional<PictureWork> pictureOfWork(const OtherWork& work) {
    if (work.marked == MarkKind::none || work.marks.empty())
        return std::nullopt;
    return PictureWork{
        rowKey(work), markOfRow(work), work.marked, polygonOf(work.marks), text(work.name)};
}

std::optional<PictureStair> pictureOfStair(const Stair& stair) {
    const FlightDrawing flight = flightOf(stair);
    if (flight.parts.empty())
        return std::nullopt;
    PictureStair drawn;
    drawn.key = rowKey(stair);
    drawn.mark = markOfRow(stair);
    for (const Outline& part : flight.parts)
        drawn.parts.push_back(polygonOf(part));
    for (const FlightDrawing::Riser& riser : flight.risers)
        drawn.risers.push_back(
            {{ViewFrame::inches(riser.a), ViewFrame::inches(riser.b)}, riser.above});
    drawn.way = polygonOf(flight.way);
    drawn.arrow = polygonOf(flight.arrow);
    drawn.label = QObject::tr("UP");
    return drawn;
}

} // namespace miterbook
