// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/figure_desk.h"
#include "stages/stage.h"
#include "windows/money_desk.h"

#include <QMainWindow>

#include <functional>
#include <memory>
#include <vector>

class QMenu;
class QStackedWidget;

namespace miterbook {

class AppServices;
class BookActions;
class Desk;
class HousesPage;
class JobPage;
class MessageStrip;
class NavBar;
class OfficePage;
class PlansPage;

using StageFactory = std::function<std::unique_ptr<Stage>(Desk&, FigureDesk&)>;

/// The window: places, messages, status line and menus. Everything else is in its pages.
class MainWindow final : public QMainWindow {
    Q_OBJECT
public:
    enum Place { houses, plans, book, office, job };

    /// Desk and services must outlive the window. Stages stand on the strip in this order.
    MainWindow(Desk& desk, AppServices& services, const std::vector<StageFactory>& stages);
    ~MainWindow() override;

    FigureDesk& figures() { return m_figures; }
    /// Opens a plan or house on its first stage. False when the book cannot; it has said why.
    bool showJob(const JobRef& job);
    void showPlace(Place place);
    Place place() const;
    /// Says the error of something that was tried, if it failed.
    void sayResult(const Result<void>& done);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void makePages(const std::vector<StageFactory>& stages);
    void connectPages();
    void makeMenus();
    void makeGoMenu();
    void fillPageMenu(QMenu& menu);
    void fillRowsMenu(QMenu& menu);
    void fillPapersMenu(QMenu& menu);
    void showTitle();
    void leaveLostJob();

    Desk& m_desk;
    AppServices& m_services;
    FigureDesk m_figures;
    MoneyDesk m_money;
    BookActions* m_files;
    NavBar* m_nav = nullptr;
    QStackedWidget* m_places = nullptr;
    HousesPage* m_houses = nullptr;
    PlansPage* m_plans = nullptr;
    OfficePage* m_office = nullptr;
    JobPage* m_job = nullptr;
    MessageStrip* m_strip = nullptr;
};

} // namespace miterbook
