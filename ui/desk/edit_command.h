// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <QUndoCommand>

namespace miterbook {

class Desk;
enum class UndoStep;

/// The one undo command: an edit that has been performed. Its first redo does nothing.
class EditCommand final : public QUndoCommand {
public:
    EditCommand(Desk& desk, Edit edit);

    void undo() override;
    void redo() override;

private:
    /// What could not be written stays in the list, to be tried again; what the book no longer
    /// allows drops out of it. The sentence has been shown.
    void takeRefusal(const Error& error, UndoStep step);

    Desk& m_desk;
    Edit m_edit;
    bool m_done = true; ///< whether the book holds the edit
};

} // namespace miterbook
