// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "io/schedule.h"
#include "takeoff/takeoff.h"

#include <QWidget>

class QAction;

namespace miterbook {

class Desk;
class FigureDesk;
class LivePanel;
class PlanForm;
class PlanPanel;
class PlanTables;
class RevisionBar;
class TargetBar;
class VariantsPanel;
struct EditTarget;

/// The plan as tables to type into, with what it comes to beside them.
class PlanPage final : public QWidget {
    Q_OBJECT
public:
    PlanPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);
    ~PlanPage() override;

    void showJob(const JobRef& job);
    void bringSchedule(ScheduleKind kind);
    void restoreRows();
    QList<QAction*> drawingActions() const;
    RevisionBar& revisions() const { return *m_revisions; }
    QString nextStep() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    void showStates();
    void showSeen();
    void switchSeen(Id<Variant> variant, bool on);
    void takeTarget(const EditTarget& target);
    void showSource(const Source& source);

    Desk& m_desk;
    FigureDesk& m_figures;
    TargetBar* m_target;
    PlanPanel* m_drawing;
    PlanTables* m_tables;
    VariantsPanel* m_variants;
    PlanForm* m_form;
    LivePanel* m_live;
    RevisionBar* m_revisions;
};

} // namespace miterbook
