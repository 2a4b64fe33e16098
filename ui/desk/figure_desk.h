// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "job/figures.h"

#include <QObject>

#include <atomic>
#include <memory>

namespace miterbook {

class Desk;

/// The figures of the job on the screen, kept up with the book: takeoff, hours, price and a quick
/// stick plan at once, the thorough stick plan from another thread a moment later.
class FigureDesk : public QObject {
    Q_OBJECT
public:
    explicit FigureDesk(Desk& desk, QObject* parent = nullptr);
    ~FigureDesk() override;

    void setJob(const JobRef& job);
    const JobRef& job() const { return m_job; }
    const JobFigures& figures() const { return m_figures; }
    /// False while a better stick plan is being looked for.
    bool settled() const { return m_settled; }
    /// Ends the search with the plan shown.
    void stopSearch();

Q_SIGNALS:
    /// New figures; emitted at once after a change, and again when the stick plan has settled.
    void figured();

private:
    void recompute();
    void startSearch();
    void takeSticks(int run, const std::vector<StickPlan>& sticks);

    Desk& m_desk;
    JobRef m_job;
    JobFigures m_figures;
    std::shared_ptr<std::atomic<bool>> m_stop;
    int m_run = 0;
    bool m_settled = true;
};

} // namespace miterbook
