// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed for a tool.
#include "desk/desk.h"
#include "desk/text.h"
#include "plan/room_text.h"
#include "stages/plan/drawing/plan_view.h"
#include "stages/plan/drawing/typed_examples.h"

namespace miterbook {

namespace {

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
            m_desk.refuse(walls ? badInput(std::string("Type the room's two sides, such as ")
                                               .append(wallsExample(unit))
                                               .append("."))
                                : walls.error());
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
    const LengthUnit unit = m_desk.book().prices.shop().unit;
    if (const auto stair = onlyOne(DrawnItem::Kind::stair)) {
        const auto width = parseLength(utf8(typed), unit);
        if (width)
            return perform(stairWidened(*m_level, m_desk.ids(), *stair, *width));
        m_desk.refuse(width.error());
        return false;
    }
    const auto opening = onlyOne(DrawnItem::Kind::opening);
    if (!opening) {
        m_desk.refuse(badInput("Choose one room, window, door or stair first."));
        return false;
    }
    const auto size = parseSize(utf8(typed), unit);
    if (size)
        return perform(openingResized(*m_level, m_desk.ids(), *opening, *size));
    m_desk.refuse(size.error());
    return false;
}

} // namespace miterbook
