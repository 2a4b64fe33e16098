// SPDX-License-Identifier: GPL-3.0-or-later
// What the view says of its tools: what typing means, what the next click does.
#include "desk/text.h"
#include "stages/plan/drawing/plan_view.h"
#include "stages/plan/drawing/typed_examples.h"

namespace miterbook {

QString PlanView::typingHint() const {
    const LengthUnit written = m_desk.book().prices.shop().unit;
    const QString size = tr("Size: %1").arg(QLatin1String(sizeExample(written)));
    const QString walls = QLatin1String(wallsExample(written));
    switch (m_tool) {
    case PlanTool::choose:
        if (onlyOne(DrawnItem::Kind::stair))
            return tr("Width of the flight");
        return onlyOne(DrawnItem::Kind::opening) ? size : tr("Name of the room, or %1").arg(walls);
    case PlanTool::rectangle:
        return tr("Sides: %1").arg(walls);
    case PlanTool::polygon:
    case PlanTool::area:
    case PlanTool::run:
        return tr("Length to the next corner");
    case PlanTool::stair:
        return tr("Length to the next landing or the head");
    case PlanTool::window:
    case PlanTool::door:
        return size;
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
    const LengthStyle style = m_desk.book().prices.shop().lengths();
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
            ? tr("Drag from corner to corner, or click one and type %1.")
                  .arg(QLatin1String(wallsExample(m_desk.book().prices.shop().unit)))
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
    case PlanTool::stair:
        hint = m_points.empty()
            ? tr("Click the foot of the stair, the middle of each landing, the head; Enter ends.")
            : tr("%1 from there; Enter ends.").arg(lengthText());
        break;
    case PlanTool::window:
    case PlanTool::door:
        hint = m_choice.size.width <= Length()
            ? tr("Type the size, then click walls.")
            : tr("%1 x %2: click on walls.")
                  .arg(text(formatLength(m_choice.size.width, style)),
                      text(formatLength(m_choice.size.height, style)));
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
