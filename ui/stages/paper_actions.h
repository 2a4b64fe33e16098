// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <string_view>

class QAction;
class QWidget;

namespace miterbook {

class Desk;
class FigureDesk;

/// "Print preview" (Ctrl+P on the page) and "Save to a file" for the paper of one stage.
class PaperActions : public QObject {
    Q_OBJECT
public:
    /// `paper` is a name of papers/paper_list.h. Goes with the page.
    PaperActions(std::string_view paper, Desk& desk, FigureDesk& figures, QWidget* page);

    QList<QAction*> actions() const;

private:
    void preview();
    void save();

    std::string_view m_paper;
    Desk& m_desk;
    FigureDesk& m_figures;
    QWidget* m_page;
    QAction* m_preview;
    QAction* m_save;
};

} // namespace miterbook
