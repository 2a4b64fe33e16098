// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_view.h"

#include "desk/desk.h"

#include <QKeyEvent>

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

struct ToolKey {
    int key;
    PlanTool tool;
};

constexpr std::array toolKeys{ToolKey{Qt::Key_V, PlanTool::choose},
    ToolKey{Qt::Key_R, PlanTool::rectangle}, ToolKey{Qt::Key_P, PlanTool::polygon},
    ToolKey{Qt::Key_W, PlanTool::window}, ToolKey{Qt::Key_D, PlanTool::door},
    ToolKey{Qt::Key_C, PlanTool::standing}, ToolKey{Qt::Key_N, PlanTool::count},
    ToolKey{Qt::Key_L, PlanTool::run}, ToolKey{Qt::Key_A, PlanTool::area},
    ToolKey{Qt::Key_T, PlanTool::tape}, ToolKey{Qt::Key_M, PlanTool::saw},
    ToolKey{Qt::Key_U, PlanTool::stair}};

constexpr double panBy = 60; // pixels

/// The way of an arrow key, one inch; nothing for other keys.
std::optional<PlanPoint> wayOf(int key) {
    const Length inch = Length::inches(1);
    switch (key) {
    case Qt::Key_Left:
        return PlanPoint{-inch, {}};
    case Qt::Key_Right:
        return PlanPoint{inch, {}};
    case Qt::Key_Up:
        return PlanPoint{{}, -inch};
    case Qt::Key_Down:
        return PlanPoint{{}, inch};
    default:
        return std::nullopt;
    }
}

PlanPoint times(PlanPoint way, std::int64_t n) {
    return {way.x * n, way.y * n};
}

} // namespace

void PlanView::keyPressEvent(QKeyEvent* event) {
    const Qt::KeyboardModifiers keys = event->modifiers() & ~Qt::KeypadModifier;
    if (moveByKey(event->key(), keys) || doByKey(event->key(), keys)
        || (keys == Qt::NoModifier && toolByKey(event->key()))) {
        event->accept();
        return;
    }
    const QString typed = event->text();
    if (!(keys & ~Qt::ShiftModifier) && !typed.isEmpty() && typed.at(0).isDigit()) {
        Q_EMIT typingBegun(typed);
        event->accept();
        return;
    }
    QWidget::keyPressEvent(event);
}

/// Arrows move what is chosen by an inch, with Shift by a foot; with a tool they move the cross
/// hair by a foot, with Shift by an inch; with Ctrl, or nothing to move, they move the sheet.
bool PlanView::moveByKey(int key, Qt::KeyboardModifiers keys) {
    const auto way = wayOf(key);
    if (!way)
        return false;
    const bool shift = keys & Qt::ShiftModifier;
    const bool panning = (keys & Qt::ControlModifier)
        || (m_tool == PlanTool::choose && m_look.selected.empty());
    if (panning) {
        m_frame.pan(-ViewFrame::inches(*way) * panBy);
        m_fitted = true;
    } else if (m_tool == PlanTool::choose) {
        nudge(times(*way, shift ? 12 : 1));
    } else {
        m_direction = *way;
        m_byKeys = true;
        m_cursor = m_cursor + times(*way, shift ? 1 : 12);
        sayHint();
    }
    update();
    return true;
}

void PlanView::nudge(PlanPoint by) {
    const auto key = onlyOne(DrawnItem::Kind::opening);
    if (!key) {
        perform(itemsMoved(*m_level, m_desk.ids(), chosenItems(), by));
        return;
    }
    const Opening* opening = m_level->opening(*key);
    const auto where = opening ? placeOf(*m_level, *opening) : std::nullopt;
    if (!where)
        return;
    const Outline& outline = where->room->outline;
    const PlanPoint way = pointOn(outline, where->place.wall, Length::inches(1))
        - outline[where->place.wall];
    const double part = way.x.toInches() * by.x.toInches() + way.y.toInches() * by.y.toInches();
    perform(openingNudged(*m_level, m_desk.ids(), *key, Length::fromInches(part)));
}

bool PlanView::toolByKey(int key) {
    for (const ToolKey& each : toolKeys) {
        if (each.key == key) {
            setTool(each.tool);
            return true;
        }
    }
    return false;
}

bool PlanView::doByKey(int key, Qt::KeyboardModifiers keys) {
    const bool ctrl = keys & Qt::ControlModifier;
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_tool == PlanTool::choose)
            Q_EMIT nameWanted();
        else if (!(m_points.size() >= 2 && m_cursor == m_points.back() && finishShape()))
            clickWith(m_cursor);
        return true;
    case Qt::Key_Escape:
        if (!m_points.empty())
            clearPoints();
        else if (m_tool != PlanTool::choose)
            setTool(PlanTool::choose);
        else
            select({});
        return true;
    case Qt::Key_Backspace:
        if (!m_points.empty()) {
            m_points.pop_back();
            update();
            return true;
        }
        [[fallthrough]];
    case Qt::Key_Delete:
        removeChosen();
        return true;
    case Qt::Key_Period:
    case Qt::Key_Comma:
        stepSelection(key == Qt::Key_Period ? 1 : -1);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(1.25);
        return true;
    case Qt::Key_Minus:
        zoom(0.8);
        return true;
    case Qt::Key_Home:
        fitAll();
        return true;
    case Qt::Key_F2:
        Q_EMIT nameWanted();
        return true;
    case Qt::Key_D:
        if (ctrl)
            copyChosen();
        return ctrl;
    case Qt::Key_E: // the next wall of the chosen room
        if (const auto room = onlyOne(DrawnItem::Kind::room); room && !ctrl) {
            const int count = static_cast<int>(m_level->room(*room)->walls.size());
            m_look.wall = count > 0 ? (m_look.wall + 1) % count : -1;
            Q_EMIT selectionChanged();
            sayHint();
            update();
        }
        return !ctrl;
    case Qt::Key_B:
    case Qt::Key_K:
    case Qt::Key_S:
        if (ctrl || m_look.wall < 0)
            return false;
        switchRun(key == Qt::Key_B ? WallRunKind::base
                : key == Qt::Key_K ? WallRunKind::crown
                                   : WallRunKind::shoe);
        return true;
    default:
        return false;
    }
}

void PlanView::stepSelection(int by) {
    std::vector<DrawnItem> items;
    for (const PictureRoom& room : m_picture.rooms)
        items.push_back({DrawnItem::Kind::room, room.key});
    for (const PictureOpening& opening : m_picture.openings)
        items.push_back({DrawnItem::Kind::opening, opening.key});
    for (const PictureWork& work : m_picture.works)
        items.push_back({DrawnItem::Kind::work, work.key});
    for (const PictureStair& stair : m_picture.stairs)
        items.push_back({DrawnItem::Kind::stair, stair.key});
    if (items.empty())
        return;
    const auto count = static_cast<std::ptrdiff_t>(items.size());
    std::ptrdiff_t at = by > 0 ? -1 : 0;
    if (m_look.selected.size() == 1) {
        const auto it = std::ranges::find(items, *m_look.selected.begin());
        at = it == items.end() ? at : it - items.begin();
    }
    show(items[static_cast<std::size_t>((at + by + count) % count)]);
}

void PlanView::removeChosen() {
    if (!m_look.selected.empty())
        perform(itemsRemoved(*m_level, m_desk.ids(), chosenItems()));
}

void PlanView::copyChosen() {
    if (m_look.selected.empty()) {
        m_desk.refuse(badInput("Choose what is to be copied first."));
        return;
    }
    const std::int64_t last = m_desk.ids().last();
    const PlanPoint by{Length::feet(2), Length::feet(2)};
    if (!perform(itemsCopied(*m_level, m_desk.ids(), chosenItems(), by)))
        return;
    std::set<DrawnItem> made;
    for (const PictureRoom& room : m_picture.rooms) {
        if (room.key > last)
            made.insert({DrawnItem::Kind::room, room.key});
    }
    if (!made.empty())
        select(std::move(made));
}

void PlanView::mirrorPlan() {
    perform(planMirrored(*m_level, m_desk.ids()));
}

void PlanView::repeatLevel() {
    perform(levelRepeated(*m_level, m_desk.ids()));
}

void PlanView::layOutTyped() {
    if (perform(typedRoomsLaidOut(*m_level, m_desk.ids())))
        fitAll();
}

void PlanView::switchRun(WallRunKind run) {
    const auto room = onlyOne(DrawnItem::Kind::room);
    if (!room || m_look.wall < 0) {
        m_desk.refuse(badInput("Choose a room and one of its walls first."));
        return;
    }
    perform(
        wallSwitched(*m_level, m_desk.ids(), *room, static_cast<std::size_t>(m_look.wall), run));
}

void PlanView::clearStanding() {
    if (const auto room = onlyOne(DrawnItem::Kind::room))
        perform(breaksCleared(*m_level, m_desk.ids(), *room));
    else
        m_desk.refuse(badInput("Choose a room first."));
}

} // namespace miterbook
