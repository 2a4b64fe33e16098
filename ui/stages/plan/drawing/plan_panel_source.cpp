// SPDX-License-Identifier: GPL-3.0-or-later
// What is chosen on the drawing is the row of a table, and the other way round.
#include "desk/desk.h"
#include "stages/plan/drawing/plan_panel.h"

#include <QApplication>

namespace miterbook {

Id<Level> PlanPanel::levelOf(const Source& source) const {
    const PlanRows& sheet = m_desk.book().sheet(m_target.plan);
    const auto levelOfRoom = [&](Id<Room> id) {
        const Room* room = sheet.of<Room>().find(id);
        return room ? room->level : Id<Level>();
    };
    if (const auto* room = std::get_if<Id<Room>>(&source.row))
        return levelOfRoom(*room);
    if (const auto* opening = std::get_if<Id<Opening>>(&source.row)) {
        const Opening* row = sheet.of<Opening>().find(*opening);
        const Id<Level> level = row ? levelOfRoom(row->room) : Id<Level>();
        return level || !row ? level : row->level;
    }
    if (const auto* work = std::get_if<Id<OtherWork>>(&source.row)) {
        const OtherWork* row = sheet.of<OtherWork>().find(*work);
        return row ? row->level : Id<Level>();
    }
    if (const auto* stair = std::get_if<Id<Stair>>(&source.row)) {
        const Stair* row = sheet.of<Stair>().find(*stair);
        return row ? row->level : Id<Level>();
    }
    return source.level;
}

bool PlanPanel::showSource(const Source& source) {
    if (m_telling)
        return true;
    std::optional<DrawnItem> item;
    if (const auto* room = std::get_if<Id<Room>>(&source.row))
        item = {DrawnItem::Kind::room, room->value()};
    else if (const auto* opening = std::get_if<Id<Opening>>(&source.row))
        item = {DrawnItem::Kind::opening, opening->value()};
    else if (const auto* work = std::get_if<Id<OtherWork>>(&source.row))
        item = {DrawnItem::Kind::work, work->value()};
    else if (const auto* stair = std::get_if<Id<Stair>>(&source.row))
        item = {DrawnItem::Kind::stair, stair->value()};
    const Id<Level> level = levelOf(source);
    if (level && level != m_level)
        showLevel(level);
    if (!item)
        return false;
    m_telling = true;
    m_view->show(*item);
    m_telling = false;
    return true;
}

void PlanPanel::tellChosen() {
    if (m_telling || m_view->selection().size() != 1)
        return;
    const DrawnItem& item = *m_view->selection().begin();
    Source source;
    source.level = m_level;
    if (item.kind == DrawnItem::Kind::room)
        source.row = Id<Room>(item.key);
    else if (item.kind == DrawnItem::Kind::opening)
        source.row = Id<Opening>(item.key);
    else if (item.kind == DrawnItem::Kind::stair)
        source.row = Id<Stair>(item.key);
    else
        source.row = Id<OtherWork>(item.key);
    QWidget* const focus = QApplication::focusWidget();
    m_telling = true;
    Q_EMIT chosen(source);
    m_telling = false;
    if (focus && isAncestorOf(focus))
        focus->setFocus(); // the table shows its row, but keys still mean the drawing
}

} // namespace miterbook
