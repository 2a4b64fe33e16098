// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_picture.h"

#include "desk/text.h"
#include "plan/room_text.h"
#include "stages/plan/drawing/opening_gestures.h"
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

class PictureMaker {
public:
    PictureMaker(const DrawnLevel& level, const OpeningStates& states)
        : m_level(level)
        , m_states(states) {}

    PlanPicture make() {
        for (const Room& room : m_level.rooms())
            addRoom(room);
        for (const Opening& opening : m_level.openings())
            addOpening(opening);
        for (const OtherWork& work : m_level.works()) {
            if (work.marked != MarkKind::none && !work.marks.empty())
                m_picture.works.push_back({rowKey(work), markOfRow(work), work.marked,
                    polygonOf(work.marks), text(work.name)});
        }
        return std::move(m_picture);
    }

private:
    void addRoom(const Room& room) {
        if (room.outline.empty()) {
            m_picture.undrawnRooms += room.removed ? 0 : 1;
            return;
        }
        PictureRoom drawn;
        drawn.key = rowKey(room);
        drawn.mark = markOfRow(room);
        drawn.outline = polygonOf(room.outline);
        drawn.middle = middleOf(room, drawn.outline);
        drawn.name = text(room.name.empty() ? room.mark : room.name);
        drawn.size = sizeOf(room);
        for (const Wall& wall : room.walls) {
            drawn.lengths.push_back(wallText(wall.length, m_level.book()));
            drawn.bare.push_back(!wall.base);
        }
        for (const BaseBreak& each : room.breaks)
            addBreak(each, drawn);
        m_picture.rooms.push_back(std::move(drawn));
    }

    QString sizeOf(const Room& room) const {
        const std::vector<Wall>& walls = room.walls;
        const bool rectangle = walls.size() == 4 && walls[0].length == walls[2].length
            && walls[1].length == walls[3].length && walls[0].angle == Angle::degrees(90);
        if (!rectangle)
            return QStringLiteral("%1 sq ft").arg(qRound(areaOf(room.outline).toDouble()));
        const bool across = room.outline[0].y == room.outline[1].y;
        return QStringLiteral("%1 × %2").arg(wallText(walls[across ? 0 : 1].length, m_level.book()),
            wallText(walls[across ? 1 : 0].length, m_level.book()));
    }

    void addBreak(const BaseBreak& each, PictureRoom& drawn) const {
        const qsizetype wall = each.wall - 1;
        if (wall < 0 || wall >= drawn.outline.size())
            return;
        const QPointF along = alongWall(drawn.outline, wall);
        const QPointF in = -outOf(along) * (each.kind == BreakKind::fireplace ? 16 : breakDepth);
        const QPointF from = drawn.outline[wall] + along * each.from.toInches();
        const QPointF to = from + along * each.length.toInches();
        drawn.breaks.push_back({QPolygonF({from, to, to + in, from + in}), text(word(each.kind))});
    }

    void addOpening(const Opening& opening) {
        const auto where = placeOf(m_level, opening);
        if (!where) {
            m_picture.unplacedOpenings += opening.removed ? 0 : 1;
            return;
        }
        PictureOpening drawn;
        drawn.key = rowKey(opening);
        drawn.mark = markOfRow(opening);
        drawn.kind = opening.kind;
        drawn.hand = opening.hand;
        const QPolygonF outline = polygonOf(where->room->outline);
        drawn.along = alongWall(outline, static_cast<qsizetype>(where->place.wall));
        drawn.out = outOf(drawn.along);
        drawn.at = ViewFrame::inches(
            pointOn(where->room->outline, where->place.wall, where->place.along));
        drawn.width = std::max(opening.width.toInches(), 6.0);
        drawn.depth = opening.wallThickness > Length() ? opening.wallThickness.toInches()
                                                       : usualWall;
        drawn.label = text(opening.mark);
        drawn.size = text(formatLength(opening.width) + " x " + formatLength(opening.height));
        const auto state = m_states.find(opening.id.value());
        if (state != m_states.end())
            drawn.state = state->second.state;
        m_picture.openings.push_back(std::move(drawn));
    }

    const DrawnLevel& m_level;
    const OpeningStates& m_states;
    PlanPicture m_picture;
};

} // namespace

QRectF PlanPicture::bounds() const {
    QRectF box;
    for (const PictureRoom& room : rooms)
        box = box.united(room.outline.boundingRect());
    for (const PictureWork& work : works)
        box = box.united(work.marks.boundingRect().adjusted(-12, -12, 12, 12));
    return box;
}

PlanPicture pictureOf(const DrawnLevel& level, const OpeningStates& states) {
    return PictureMaker(level, states).make();
}

QString wallText(Length length, const Book& book) {
    LengthStyle style = book.prices.shop().lengths();
    if (style.unit == LengthUnit::inches)
        style.unit = LengthUnit::feetInches;
    return text(formatLengthWithUnit(length, style));
}

} // namespace miterbook
