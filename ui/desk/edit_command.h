// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <QUndoCommand>

namespace miterbook {

class Desk;

/// The one undo command: an edit that has been performed. Its first redo does nothing.
class EditCommand final : public QUndoCommand {
public:
    EditCommand(Desk& desk, Edit edit);

    void undo() override;
    void redo() override;

private:
    Desk& m_desk;
    Edit m_edit;
    bool m_done = true;
};

} // namespace miterbook
