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
    m_done = false;
    // What the book no longer allows drops out of the list; the sentence has been shown.
    if (!m_desk.carryOut(inverse(m_edit)))
        setObsolete(true);
}

void EditCommand::redo() {
    if (m_done)
        return;
    m_done = m_desk.carryOut(m_edit);
    if (!m_done)
        setObsolete(true);
}

} // namespace miterbook
