// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "job/alternates.h"
#include "job/sent_bids.h"
#include "papers/paper.h"

#include <QWidget>

class QComboBox;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;

/// The bids that were sent on a job: sending, printing, the builder's answer, and two of them
/// compared line by line.
class SentTab final : public QWidget {
    Q_OBJECT
public:
    SentTab(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    void showJob(const JobRef& job);
    FigureView& bids() const { return *m_bids; }
    FigureView& differences() const { return *m_differences; }
    /// The bid of the cursor as it was sent. Errors: none is chosen, or its text has been damaged.
    Result<Paper> currentPaper() const;

public Q_SLOTS:
    void send();
    void printOne();
    void accept();
    void lose();
    void reopen();
    void copySettings();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* sentPart();
    QWidget* comparePart();
    void refresh();
    void refreshChoices();
    void compare();
    Result<Paper> chosenPaper(const QComboBox& box) const;
    const SentBid* current() const;
    void answer(BidAnswer how, const QString& title, const QString& noteLabel);
    bool reckon(JobFigures& figures, std::vector<Alternate>& alternates);
    bool perform(const Result<Edit>& edit);

    Desk& m_desk;
    FigureDesk& m_figures;
    JobRef m_job;
    std::vector<SentBid> m_sent; ///< as the table shows them
    FigureView* m_bids;
    FigureView* m_differences;
    QComboBox* m_before;
    QComboBox* m_after;
};

} // namespace miterbook
