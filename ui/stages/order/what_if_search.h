// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/figures.h"
#include "order/what_if.h"

#include <QObject>

#include <atomic>
#include <memory>

namespace miterbook {

/// Plans the sticks of a job on another thread as they would be if something were otherwise. A new
/// question takes the place of one that is still being worked on.
class WhatIfSearch : public QObject {
    Q_OBJECT
public:
    explicit WhatIfSearch(QObject* parent = nullptr);
    ~WhatIfSearch() override;

    void ask(const JobFigures& figures, const PriceBook& prices, const WhatIf& whatIf);
    void stop();
    bool busy() const { return static_cast<bool>(m_stop); }

Q_SIGNALS:
    void answered(const miterbook::Result<std::vector<miterbook::StickPlan>>& plans);

private:
    void take(int run, const Result<std::vector<StickPlan>>& plans);

    std::shared_ptr<std::atomic<bool>> m_stop;
    int m_run = 0;
};

} // namespace miterbook
