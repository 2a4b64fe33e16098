// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "job/workbook.h"

#include <QObject>
#include <QUndoStack>

#include <vector>

namespace miterbook {

using Changes = std::vector<Change>;

enum class UndoStep { undo, redo };

/// The open book on the screen's side: every gesture goes through perform(), every page listens to
/// changed(). There is no save: what has been performed is in the file.
class Desk : public QObject {
    Q_OBJECT
public:
    /// The clock must outlive the desk.
    Desk(Workbook workbook, const Clock& clock, QObject* parent = nullptr);

    const Book& book() const { return m_workbook.book(); }
    IdSource& ids() { return m_workbook.ids(); }
    const Clock& clock() const { return m_clock; }
    QUndoStack& undoStack() { return m_undo; }

    /// Makes sure that a plan's rows are in memory; refused() says why not.
    bool openPlan(Id<Plan> plan);
    /// The same of the time entries of some days.
    bool openDays(Date first, Date last);
    /// The tasks of all bids that were won; none, and refused(), where they cannot be read.
    SoldTasks soldTasks();
    /// Does one gesture: file, memory, changed(), undo list. False, and refused(), if it cannot be
    /// done; then nothing has changed anywhere. An empty edit is done at once.
    bool perform(const Edit& edit);
    /// Says a sentence as refused() does, for input that never became an edit.
    void refuse(const Error& error);

Q_SIGNALS:
    void changed(const miterbook::Changes& changes);
    void refused(const QString& sentence);

private:
    friend class EditCommand;
    /// perform() without the undo list; used by undo and redo.
    Result<void> carryOut(const Edit& edit);
    /// Takes back the step of the undo list that is being made, once it has been made: what it
    /// stands for could not be written, and can be tried again.
    void stepBack(UndoStep step);

    Workbook m_workbook;
    const Clock& m_clock;
    QUndoStack m_undo;
};

} // namespace miterbook

Q_DECLARE_METATYPE(miterbook::Changes)
