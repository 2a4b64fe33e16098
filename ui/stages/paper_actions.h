// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "papers/paper.h"

#include <QObject>

#include <functional>
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
    /// Whose week a paper of the whole shop is; today's until it is said.
    void setDay(std::function<Date()> day) { m_day = std::move(day); }

private:
    Result<Paper> paper() const;
    void preview();
    void save();

    std::string_view m_paper;
    Desk& m_desk;
    FigureDesk& m_figures;
    QWidget* m_page;
    std::function<Date()> m_day;
    QAction* m_preview;
    QAction* m_save;
};

} // namespace miterbook
