// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/edit_command.h"

#include "desk/desk.h"
#include "desk/text.h"

namespace miterbook {

EditCommand::EditCommand(Desk& desk, Edit edit)
    : QUndoCommand(menuText(miterbook::text(edit.sentence)))
    , m_desk(desk)
    , m_edit(std::move(edit)) {
}

void EditCommand::undo() {
    if (!m_done)
        return;
    if (const auto undone = m_desk.carryOut(inverse(m_edit)); undone)
        m_done = false;
    else
        takeRefusal(undone.error(), UndoStep::undo);
}

void EditCommand::redo() {
    if (m_done)
        return;
    if (const auto done = m_desk.carryOut(m_edit); done)
        m_done = true;
    else
        takeRefusal(done.error(), UndoStep::redo);
}

void EditCommand::takeRefusal(const Error& error, UndoStep step) {
    if (error.fault == Fault::storage)
        m_desk.stepBack(step);
    else
        setObsolete(true);
}

} // namespace miterbook
