// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QWidget>

#include <memory>
#include <vector>

class QAction;
class QLabel;
class QStackedWidget;

namespace miterbook {

class Desk;
class FigureDesk;
class NavBar;
class SelectionBar;
class Stage;

/// One plan or house: the strip of its stages, what is selected of a plan, the next step, and the
/// page of the stage that is shown.
class JobPage final : public QWidget {
    Q_OBJECT
public:
    JobPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);
    ~JobPage() override;

    void addStage(std::unique_ptr<Stage> stage);
    int stageCount() const { return static_cast<int>(m_stages.size()); }
    QString stageTitle(int stage) const;
    QList<QAction*> stageActions() const;

    /// Shows the figure desk's job on the first stage.
    void showJob();
    void showStage(int stage);
    /// "Lot 14", or "Alder, Hollis Homes".
    QString title() const;

private:
    void passJobOn();
    void showNextStep();
    Stage* current() const;

    Desk& m_desk;
    FigureDesk& m_figures;
    std::vector<std::unique_ptr<Stage>> m_stages;
    JobRef m_shown;
    NavBar* m_strip;
    SelectionBar* m_selection;
    QLabel* m_next;
    QStackedWidget* m_pages;
};

} // namespace miterbook
