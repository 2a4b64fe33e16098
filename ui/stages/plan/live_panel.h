// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

#include <QWidget>

class QLabel;
class QCheckBox;
class QListWidget;
class QPushButton;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;

/// What the plan comes to while it is typed: price, hours, running feet by profile, and what is
/// wrong or seems forgotten.
class LivePanel final : public QWidget {
    Q_OBJECT
public:
    LivePanel(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    /// How many remarks are problems, and how many are there in all.
    int problems() const { return m_problems; }
    int remarks() const { return static_cast<int>(m_remarks.size()); }
    /// Puts the current reminder away with a reason; brings one back that was put away.
    void putAway(const QString& reason);
    void bringBack();

Q_SIGNALS:
    /// The row of a remark is wanted.
    void wanted(const miterbook::Source& source);

private:
    void show();
    void showHead();
    void showFeet();
    void showRemarks();
    void showChosen();
    void askReason();
    const Table<Dismissal>& dismissals() const;

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_head;
    FigureView* m_feet;
    QLabel* m_count;
    QListWidget* m_list;
    QPushButton* m_away;
    QCheckBox* m_showAway;
    std::vector<Remark> m_remarks;    ///< as listed
    std::vector<Dismissal> m_putAway; ///< listed behind them when asked for
    int m_problems = 0;
};

} // namespace miterbook
