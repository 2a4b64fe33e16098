// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_view.h"

#include "desk/desk.h"
#include "plan/redraw.h"

#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QWheelEvent>

#include <cmath>

namespace miterbook {

namespace {

constexpr double dragFrom = 4; // pixels that make a press a drag
constexpr double handleReach = 7;
constexpr double wallReach = 14;

double away(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

} // namespace

void PlanView::wheelEvent(QWheelEvent* event) {
    const bool pad = !event->pixelDelta().isNull() && event->phase() != Qt::NoScrollPhase;
    if (pad && !(event->modifiers() & Qt::ControlModifier))
        m_frame.pan(event->pixelDelta());
    else
        m_frame.zoom(std::pow(1.0015, event->angleDelta().y()), event->position());
    m_fitted = true;
    event->accept();
    update();
}

bool PlanView::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            m_frame.zoom(1.0 + gesture->value(), gesture->position());
            update();
            return true;
        }
    }
    return QWidget::event(event);
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    m_pressed = m_last = event->position();
    m_moved = false;
    m_byKeys = false;
    if (event->button() == Qt::MiddleButton || event->button() == Qt::RightButton) {
        m_drag = Drag::pan;
        return;
    }
    if (event->button() == Qt::LeftButton)
        pressAt(event->position(), event->modifiers());
}

void PlanView::pressAt(QPointF at, Qt::KeyboardModifiers keys) {
    m_cursor = snappedAt(at);
    switch (m_tool) {
    case PlanTool::choose:
        pressToChoose(at, keys);
        break;
    case PlanTool::rectangle:
        if (m_points.empty()) {
            m_points = {m_cursor};
            m_drag = Drag::shape;
        }
        break;
    case PlanTool::standing:
        m_points = {m_frame.toPlan(at)};
        m_drag = Drag::shape;
        break;
    default:
        break; // on release
    }
    update();
}

void PlanView::pressToChoose(QPointF at, Qt::KeyboardModifiers keys) {
    if (takeHandle(at))
        return;
    const auto item = itemAt(at);
    const bool more = keys & (Qt::ShiftModifier | Qt::ControlModifier);
    if (!item) {
        m_drag = Drag::band;
        if (!more)
            select({});
        return;
    }
    if (more) {
        std::set<DrawnItem> items = m_look.selected;
        if (!items.erase(*item))
            items.insert(*item);
        select(std::move(items));
        return;
    }
    if (!m_look.selected.contains(*item))
        select({*item});
    m_drag = item->kind == DrawnItem::Kind::opening ? Drag::opening : Drag::items;
}

/// A corner or wall of the one room chosen.
bool PlanView::takeHandle(QPointF at) {
    const auto key = onlyOne(DrawnItem::Kind::room);
    const Room* room = key ? m_level->room(*key) : nullptr;
    if (!room || room->outline.empty())
        return false;
    const Outline& outline = room->outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const QPointF corner = m_frame.toScreen(outline[i]);
        const QPointF next = m_frame.toScreen(outline[(i + 1) % outline.size()]);
        const bool isCorner = away(corner, at) <= handleReach;
        if (isCorner || away((corner + next) / 2, at) <= handleReach) {
            m_drag = isCorner ? Drag::corner : Drag::wall;
            m_dragPart = i;
            return true;
        }
    }
    return false;
}

std::optional<DrawnItem> PlanView::itemAt(QPointF at) const {
    for (const PictureWork& work : m_picture.works) {
        for (const QPointF& mark : work.marks) {
            if (away(m_frame.toScreen(mark), at) <= handleReach)
                return DrawnItem{DrawnItem::Kind::work, work.key};
        }
    }
    for (const PictureOpening& opening : m_picture.openings) {
        const QPointF off = m_frame.toInches(at) - opening.at;
        const double along = QPointF::dotProduct(off, opening.along);
        const double out = QPointF::dotProduct(off, opening.out);
        const double reach = 6 / m_frame.scale();
        if (std::abs(along) <= opening.width / 2 && out >= -reach && out <= opening.depth + reach)
            return DrawnItem{DrawnItem::Kind::opening, opening.key};
    }
    const PlanPoint point = m_frame.toPlan(at);
    for (const Stair& stair : m_level->stairs()) {
        if (isOn(flightOf(stair), point))
            return DrawnItem{DrawnItem::Kind::stair, rowKey(stair)};
    }
    const Room* room = m_level->roomAt(point);
    if (!room) {
        const auto wall = m_level->wallAt(point, m_frame.length(handleReach));
        room = wall ? wall->room : nullptr;
    }
    if (!room)
        return std::nullopt;
    return DrawnItem{DrawnItem::Kind::room, rowKey(*room)};
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (m_drag == Drag::pan) {
        m_frame.pan(at - m_last);
        m_fitted = true;
    } else if (m_drag != Drag::none) {
        m_moved = m_moved || away(at, m_pressed) >= dragFrom;
        if (m_moved)
            dragTo(at);
    }
    m_last = at;
    m_cursor = snappedAt(at);
    if (m_tool != PlanTool::choose)
        sayHint();
    if (m_drag != Drag::none || m_tool != PlanTool::choose)
        update();
}

void PlanView::dragTo(QPointF at) {
    const auto key = onlyOne(DrawnItem::Kind::room);
    const Room* room = key ? m_level->room(*key) : nullptr;
    const PlanPoint by = m_frame.toPlan(at) - m_frame.toPlan(m_pressed);
    if (m_drag == Drag::items && room && !room->outline.empty()) {
        m_dragBy = snappedMove(room->outline, by, snapTo({*key}));
        m_dragOutline = moved(room->outline, m_dragBy);
    } else if (m_drag == Drag::items) {
        m_dragBy = {roundTo(by.x, step()), roundTo(by.y, step())};
    } else if (m_drag == Drag::corner && room) {
        m_dragOutline = room->outline;
        SnapTo to = snapTo({*key});
        to.before = room->outline;
        to.before.erase(to.before.begin() + static_cast<std::ptrdiff_t>(m_dragPart));
        m_dragOutline[m_dragPart] = snapped(room->outline[m_dragPart] + by, to).point;
    } else if (m_drag == Drag::wall && room) {
        const PlanPoint corner = room->outline[m_dragPart];
        const PlanPoint to = snapped(corner + by, snapTo({*key})).point;
        m_dragOutline = wallMoved(room->outline, m_dragPart, to - corner);
    }
    if (!m_dragOutline.empty())
        Q_EMIT said(wallText(wallsOf(m_dragOutline)[m_drag == Drag::items ? 0 : m_dragPart].length,
                        m_desk.book())
            + tr(" along the wall"));
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
    const Drag drag = m_drag;
    if (drag == Drag::pan) {
        m_drag = Drag::none;
        return;
    }
    if (event->button() != Qt::LeftButton)
        return;
    dropAt(event->position(), event->modifiers());
    m_drag = Drag::none;
    m_dragOutline.clear();
    update();
}

void PlanView::dropAt(QPointF at, Qt::KeyboardModifiers keys) {
    const bool more = keys & (Qt::ShiftModifier | Qt::ControlModifier);
    const auto room = onlyOne(DrawnItem::Kind::room);
    const auto opening = onlyOne(DrawnItem::Kind::opening);
    const Drag drag = m_drag;
    m_cursor = snappedAt(at);
    if (m_tool == PlanTool::standing && !m_points.empty()) {
        standHere(m_points.front(), m_frame.toPlan(at));
    } else if (m_tool == PlanTool::rectangle && drag == Drag::shape) {
        if (m_moved)
            clickWith(m_cursor);
    } else if (m_tool != PlanTool::choose) {
        clickWith(
            m_tool == PlanTool::window || m_tool == PlanTool::door ? m_frame.toPlan(at) : m_cursor);
    } else if (drag == Drag::band) {
        if (m_moved)
            finishBand(more);
    } else if (!m_moved) {
        chooseWallAt(at);
    } else if (drag == Drag::opening && opening) {
        if (const auto hit = m_level->wallAt(m_frame.toPlan(at), m_frame.length(wallReach * 2)))
            perform(openingMoved(*m_level, m_desk.ids(), *opening, rowKey(*hit->room), hit->place));
    } else if (drag == Drag::items) {
        perform(itemsMoved(*m_level, m_desk.ids(), chosenItems(), m_dragBy));
    } else if ((drag == Drag::corner || drag == Drag::wall) && room && !m_dragOutline.empty()) {
        perform(roomReshaped(*m_level, m_desk.ids(), *room, m_dragOutline));
    }
}

void PlanView::finishBand(bool more) {
    const QRectF band = QRectF(m_pressed, m_last).normalized();
    std::set<DrawnItem> items = more ? m_look.selected : std::set<DrawnItem>();
    for (const PictureRoom& room : m_picture.rooms) {
        if (band.contains(m_frame.toScreen(room.middle)))
            items.insert({DrawnItem::Kind::room, room.key});
    }
    for (const PictureOpening& opening : m_picture.openings) {
        if (band.contains(m_frame.toScreen(opening.at)))
            items.insert({DrawnItem::Kind::opening, opening.key});
    }
    for (const PictureStair& stair : m_picture.stairs) {
        if (band.contains(m_frame.toScreen(stair.bounds().center())))
            items.insert({DrawnItem::Kind::stair, stair.key});
    }
    select(std::move(items));
}

/// A click on a wall of the one room chosen chooses that wall too.
void PlanView::chooseWallAt(QPointF at) {
    const auto key = onlyOne(DrawnItem::Kind::room);
    const Room* room = key ? m_level->room(*key) : nullptr;
    const auto place = room ? nearestWall(room->outline, m_frame.toPlan(at)) : std::nullopt;
    m_look.wall = -1;
    if (place) {
        const QPointF on = m_frame.toScreen(pointOn(room->outline, place->wall, place->along));
        if (away(on, at) <= wallReach)
            m_look.wall = static_cast<int>(place->wall);
    }
    Q_EMIT selectionChanged();
    sayHint();
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    const bool byCorners = m_tool == PlanTool::polygon || m_tool == PlanTool::run
        || m_tool == PlanTool::area || m_tool == PlanTool::stair;
    if (byCorners) {
        finishShape();
        m_drag = Drag::pan; // the release that follows clicks nothing
    } else if (m_tool != PlanTool::choose) {
        mousePressEvent(event);
    } else if (!m_look.selected.empty()) {
        Q_EMIT nameWanted();
    }
}

} // namespace miterbook
