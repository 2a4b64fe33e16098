// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk.h"

#include "desk/edit_command.h"
#include "desk/text.h"

namespace miterbook {

Desk::Desk(Workbook workbook, const Clock& clock, QObject* parent)
    : QObject(parent)
    , m_workbook(std::move(workbook))
    , m_clock(clock) {
    m_workbook.setDay(clock.today());
}

bool Desk::openPlan(Id<Plan> plan) {
    const auto opened = m_workbook.openPlan(plan);
    if (!opened)
        refuse(opened.error());
    return opened.ok();
}

bool Desk::openDays(Date first, Date last) {
    const auto opened = m_workbook.openDays(first, last);
    if (!opened)
        refuse(opened.error());
    return opened.ok();
}

SoldTasks Desk::soldTasks() {
    auto tasks = m_workbook.soldTasks();
    if (!tasks) {
        refuse(tasks.error());
        return {};
    }
    return std::move(tasks).value();
}

bool Desk::perform(const Edit& edit) {
    if (edit.empty())
        return true;
    if (!carryOut(edit))
        return false;
    m_undo.push(new EditCommand(*this, edit)); // after the fact: a push cannot report a failure
    return true;
}

void Desk::refuse(const Error& error) {
    Q_EMIT refused(text(error.sentence));
}

Result<void> Desk::carryOut(const Edit& edit) {
    if (auto done = m_workbook.perform(edit); !done) {
        refuse(done.error());
        return done;
    }
    m_workbook.setDay(m_clock.today()); // left open over midnight
    Q_EMIT changed(edit.changes);
    return {};
}

void Desk::stepBack(UndoStep step) {
    const auto back = [this, step] { step == UndoStep::undo ? m_undo.redo() : m_undo.undo(); };
    QMetaObject::invokeMethod(this, back, Qt::QueuedConnection);
}

} // namespace miterbook
