// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class Desk;
class FigureDesk;
class PlanPage;

/// The plan: levels, rooms, openings and what else is trimmed, typed into tables.
class PlanStage final : public Stage {
    Q_OBJECT
public:
    PlanStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~PlanStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override { return m_actions; }
    QString nextStep() const override;

private:
    QPointer<PlanPage> m_page;
    QList<QAction*> m_actions;
};

} // namespace miterbook
