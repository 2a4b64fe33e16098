// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/line_costs.h"
#include "desk/job_ref.h"
#include "job/figures.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace miterbook {

class Desk;
class FigureView;

/// Each line by its cost and at the shop's piece price, which of them lose money, and a line
/// switched to the other way.
class BothWaysTab final : public QWidget {
    Q_OBJECT
public:
    explicit BothWaysTab(Desk& desk, QWidget* parent = nullptr);

    void showFigures(const JobRef& job, const JobFigures& figures);
    FigureView& lines() const { return *m_lines; }
    QString words() const;

public Q_SLOTS:
    void switchLine();

private:
    Desk& m_desk;
    JobRef m_job;
    BidSetup m_setup;
    std::vector<Task> m_tasks; ///< of the lines shown
    std::vector<bool> m_hasPiecePrice;
    QLabel* m_words;
    FigureView* m_lines;
};

} // namespace miterbook
