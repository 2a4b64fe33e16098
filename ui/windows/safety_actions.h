// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QMenu;

namespace miterbook {

class AppServices;
class MainWindow;

/// What is done so that a book cannot be lost: backups, snapshots, a thorough look.
class SafetyActions final : public QObject {
    Q_OBJECT
public:
    SafetyActions(AppServices& services, MainWindow& window);

    void fill(QMenu& menu);

private:
    void showBackups();
    void writeSnapshot();
    void takeInSnapshot();
    void checkBook();
    void showFindings(const QStringList& findings);

    AppServices& m_services;
    MainWindow& m_window;
};

} // namespace miterbook
