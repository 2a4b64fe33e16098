// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <QObject>

class QAction;
class QMenu;

namespace miterbook {

class AppServices;
class Desk;
class MainWindow;
class SafetyActions;

/// What is done with files: the book itself, and plans brought in and written out.
class BookActions final : public QObject {
    Q_OBJECT
public:
    BookActions(Desk& desk, AppServices& services, MainWindow& window);

    void fill(QMenu& menu);
    QAction* bringPlan() const { return m_bring; }
    /// Asks where to, and writes the plan as an exchange file.
    void writePlan(Id<Plan> plan);

private:
    void newBook();
    void openBook();
    void bringPlanFiles();
    void fillRecent(QMenu& menu);

    Desk& m_desk;
    AppServices& m_services;
    MainWindow& m_window;
    SafetyActions* m_safety;
    QAction* m_bring;
};

} // namespace miterbook
