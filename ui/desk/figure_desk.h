// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_memory.h"
#include "desk/job_ref.h"
#include "job/edit.h"
#include "job/figures.h"

#include <QObject>

#include <atomic>
#include <memory>
#include <vector>

namespace miterbook {

class Desk;

/// The figures of the job on the screen, kept up with the book: takeoff, hours and price at once.
/// The stick plan of a profile that a change has left alone stays; another gets a quick plan at
/// once and a thorough one from another thread a moment later.
class FigureDesk : public QObject {
    Q_OBJECT
public:
    explicit FigureDesk(Desk& desk, QObject* parent = nullptr);
    ~FigureDesk() override;

    void setJob(const JobRef& job);
    const JobRef& job() const { return m_job; }
    const JobFigures& figures() const { return m_figures; }
    /// False while a better stick plan is being looked for.
    bool settled() const { return !m_stop; }
    /// Profiles whose plan is not the thorough one yet; more than none and settled: stopped.
    int unsettled() const { return static_cast<int>(m_open.size()); }
    /// Ends the search with the plans shown.
    void stopSearch();
    /// Looks on where stopSearch() ended it.
    void resumeSearch();

Q_SIGNALS:
    /// New figures, or another state of the search; emitted at once after a change, and again with
    /// each stick plan that has settled.
    void figured();
    /// Only what is measured, ticked or tested at the saw has changed; the figures are as they
    /// were.
    void sawRowsChanged();

private:
    void takeIn(const std::vector<Change>& changes);
    StickPlan planFor(const StickNeed& need);
    void recompute();
    void endSearch();
    void startSearch();
    void takePlan(int run, const StickQuestion& question, const StickPlan& plan);

    Desk& m_desk;
    JobRef m_job;
    PriceBook m_prices; ///< with the rack as the job sees it
    JobFigures m_figures;
    StickMemory m_memory;
    std::vector<StickQuestion> m_open;         ///< of the plans that are only quick ones
    std::shared_ptr<std::atomic<bool>> m_stop; ///< of the search that is on; nothing: none is
    int m_run = 0;
};

} // namespace miterbook
