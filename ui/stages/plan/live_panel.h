// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

#include <QWidget>

class QLabel;
class QListWidget;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;

/// What the plan comes to while it is typed: price, hours, running feet by profile, and what is wrong
/// or seems forgotten.
class LivePanel final : public QWidget {
    Q_OBJECT
public:
    LivePanel(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    /// How many remarks are problems, and how many are there in all.
    int problems() const { return m_problems; }
    int remarks() const { return static_cast<int>(m_remarks.size()); }

Q_SIGNALS:
    /// The row of a remark is wanted.
    void wanted(const miterbook::Source& source);

private:
    void show();
    void showHead();
    void showFeet();
    void showRemarks();

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_head;
    FigureView* m_feet;
    QLabel* m_count;
    QListWidget* m_list;
    std::vector<Remark> m_remarks;
    int m_problems = 0;
};

} // namespace miterbook
