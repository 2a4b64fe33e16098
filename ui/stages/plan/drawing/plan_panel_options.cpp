// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk.h"
#include "desk/text.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/sheets/sheet_menu.h"

#include <QAction>
#include <QActionGroup>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace miterbook {

/// What can be chosen and typed for the tool.
void PlanPanel::showOptions() {
    const PlanTool tool = m_view->tool();
    for (QAction* action : m_group->actions())
        action->setChecked(action->data().toInt() == static_cast<int>(tool));
    m_kind->clear();
    const auto add
        = [&](auto value) { m_kind->addItem(text(word(value)), static_cast<int>(value)); };
    const auto addTasks = [&](Unit unit) {
        for (const Task task : tasksIn(unit))
            add(task);
    };
    if (tool == PlanTool::door) {
        for (const auto& each : Words<OpeningKind>::list) {
            if (each.value != OpeningKind::window)
                add(each.value);
        }
    } else if (tool == PlanTool::standing) {
        for (const auto& each : Words<BreakKind>::list)
            add(each.value);
    } else if (tool == PlanTool::count) {
        addTasks(Unit::each);
    } else if (tool == PlanTool::run) {
        addTasks(Unit::linearFoot);
    } else if (tool == PlanTool::area) {
        addTasks(Unit::squareFoot);
    }
    m_kind->setVisible(m_kind->count() > 0);
    int chosen = static_cast<int>(m_view->markChoice().task);
    if (tool == PlanTool::door)
        chosen = static_cast<int>(m_view->openingChoice().kind);
    else if (tool == PlanTool::standing)
        chosen = static_cast<int>(m_view->standing());
    m_kind->setCurrentIndex(std::max(m_kind->findData(chosen), 0));
    takeKind();
    m_typeLabel->setText(m_view->typingHint());
    const bool types = !m_view->typingHint().isEmpty();
    m_typeLabel->setVisible(types);
    m_type->setVisible(types);
}

void PlanPanel::takeKind() {
    const PlanTool tool = m_view->tool();
    const int value = m_kind->currentData().toInt();
    if (tool == PlanTool::window) {
        m_view->openingChoice().kind = OpeningKind::window;
    } else if (m_kind->count() == 0) {
        return;
    } else if (tool == PlanTool::door) {
        m_view->openingChoice().kind = static_cast<OpeningKind>(value);
    } else if (tool == PlanTool::standing) {
        m_view->setStanding(static_cast<BreakKind>(value));
    } else {
        if (m_view->markChoice().task != static_cast<Task>(value))
            m_view->markChoice().name.clear();
        m_view->markChoice().task = static_cast<Task>(value);
    }
}

void PlanPanel::takeTyped() {
    const bool known = m_view->tool() == PlanTool::tape;
    if (known ? m_sheetMenu->setKnownLength(m_type->text()) : m_view->take(m_type->text()))
        m_type->clear();
    else
        m_type->selectAll();
    if (m_type->text().isEmpty())
        m_view->setFocus();
}

/// Thicknesses of walls as the shop writes lengths, unless somebody is typing them.
void PlanPanel::sayWalls() {
    if (m_walls->hasFocus() || m_outside->hasFocus())
        return;
    const LengthStyle style = m_desk.book().prices.shop().lengths();
    const auto say = [&](QLineEdit* line, Length length) {
        line->setText(length == Length() ? QString() : text(formatLength(length, style)));
    };
    say(m_walls, m_view->wallThickness());
    say(m_outside, m_view->openingChoice().outsideWall);
}

/// Thicknesses of walls as typed; what is no length stays as it was.
void PlanPanel::takeWalls() {
    const LengthUnit unit = m_desk.book().prices.shop().unit;
    const auto read = [&](QLineEdit* line) -> std::optional<Length> {
        if (line->text().trimmed().isEmpty())
            return Length();
        const auto length = parseLength(utf8(line->text()), unit);
        if (!length)
            m_desk.refuse(length.error());
        return length ? std::optional(*length) : std::nullopt;
    };
    if (const auto inside = read(m_walls))
        m_view->setWallThickness(*inside);
    if (const auto outside = read(m_outside))
        m_view->openingChoice().outsideWall = *outside;
}

} // namespace miterbook
