// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/timer.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTimer;

namespace miterbook {

class WeekDesk;

/// A running timer for each of the crew, at the house on the screen. It is a row of the book:
/// closed or crashed, the program finds it running again.
class TimerBar final : public QWidget {
    Q_OBJECT
public:
    explicit TimerBar(WeekDesk& week, QWidget* parent = nullptr);

    /// Chooses whose timer is shown.
    void choosePerson(Id<CrewMember> person);
    void chooseWhat(const QString& what);
    QString state() const;

public Q_SLOTS:
    void startOrPause();
    /// Makes an entry of what has run, or of the hours that were typed.
    void writeDown();
    void throwAway();

private:
    const Timer* timer() const;
    Id<CrewMember> person() const;
    bool put(const std::string& sentence, const Timer& timer);
    Result<Timer> newTimer() const;
    Result<TimeEntry> entryOf(const Timer& timer) const;
    bool hasTimer(Id<CrewMember> person) const;
    void fillPeople();
    void refresh();

    WeekDesk& m_week;
    QComboBox* m_person;
    QComboBox* m_what;
    QPushButton* m_start;
    QPushButton* m_write;
    QPushButton* m_drop;
    QLineEdit* m_hours;
    QLabel* m_state;
    QTimer* m_tick;
};

} // namespace miterbook
