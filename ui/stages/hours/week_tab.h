// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QAction;
class QLabel;
class QVBoxLayout;

namespace miterbook {

class DataTable;
class TablePanel;
class WeekDesk;
enum class WeekStart;

/// The week grid: a line for each person, house and piece of work, a column for each day.
class WeekTab final : public QWidget {
    Q_OBJECT
public:
    explicit WeekTab(WeekDesk& week, QWidget* parent = nullptr);

    DataTable& table() const;
    QList<QAction*> actions() const { return m_actions; }
    /// What makes somebody look twice, and whether the week is approved.
    QString remarks() const;

private:
    void makeActions();
    QAction* action(const QString& words, void (WeekTab::*slot)());
    void refresh();
    void makeTable();
    void before();
    void after();
    void thisWeek();
    void repeat();
    void approve();

    WeekDesk& m_week;
    QVBoxLayout* m_layout;
    QLabel* m_title;
    QLabel* m_remarks;
    TablePanel* m_panel = nullptr;
    WeekStart m_start;
    QList<QAction*> m_actions;
    QAction* m_approve = nullptr;
};

} // namespace miterbook
