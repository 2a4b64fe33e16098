// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QTabWidget;

namespace miterbook {

class Desk;
class EntriesTab;
class FigureDesk;
class PayTab;
class ProgressTab;
class TimerBar;
class WeekDesk;
class WeekTab;

/// The crew's hours: the week of everybody, and how the house on the screen stands against its bid.
class HoursPage final : public QWidget {
    Q_OBJECT
public:
    HoursPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    WeekDesk& week() const { return *m_week; }
    WeekTab& grid() const { return *m_grid; }
    EntriesTab& entries() const { return *m_entries; }
    ProgressTab& progress() const { return *m_progress; }
    PayTab& pay() const { return *m_pay; }
    TimerBar& timer() const { return *m_timer; }
    QTabWidget& tabs() const { return *m_tabs; }
    QString nextStep() const;

private:
    WeekDesk* m_week;
    TimerBar* m_timer;
    WeekTab* m_grid;
    EntriesTab* m_entries;
    ProgressTab* m_progress;
    PayTab* m_pay;
    QTabWidget* m_tabs;
};

} // namespace miterbook
