// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_memory.h"
#include "desk/job_ref.h"
#include "job/scenario_figures.h"

#include <QWidget>

#include <optional>

namespace miterbook {

class DataTable;
class Desk;
class FigureDesk;
class FigureView;
class TableModelBase;

/// Named scenarios of a bid, typed into a table, and what each comes to beside the bid as it is.
class WhatIfTab final : public QWidget {
    Q_OBJECT
public:
    WhatIfTab(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    void showJob(const JobRef& job);
    DataTable& scenarios() const { return *m_table; }
    FigureView& outcomes() const { return *m_outcomes; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    TableModelBase* scenarioModel();
    void refresh();
    const RiskBelief& belief();

    Desk& m_desk;
    FigureDesk& m_figures;
    JobRef m_job;
    StickMemory m_memory;
    std::optional<RiskBelief> m_belief; ///< nothing: the finished houses have changed
    TableModelBase* m_model;
    DataTable* m_table;
    FigureView* m_outcomes;
};

} // namespace miterbook
