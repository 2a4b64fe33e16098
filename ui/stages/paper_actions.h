// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <string_view>

class QAction;

namespace miterbook {

class Desk;
class FigureDesk;
struct Paper;

/// "Print preview" and "Save to file" for one paper of the job on the screen.
class PaperActions : public QObject {
    Q_OBJECT
public:
    /// `paper` is a name of papers/paper_list.h.
    PaperActions(std::string_view paper, Desk& desk, FigureDesk& figures, QObject* parent);

    QList<QAction*> actions() const;

private:
    Paper make() const;
    void preview();
    void save();

    std::string_view m_paper;
    Desk& m_desk;
    FigureDesk& m_figures;
    QAction* m_preview;
    QAction* m_save;
};

} // namespace miterbook
