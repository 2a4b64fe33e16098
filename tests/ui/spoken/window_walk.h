// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QTimer>

#include <functional>
#include <set>

class QMenu;
class QWidget;

namespace miterbook {

class Desk;
class MainWindow;

/// Goes through a whole window as a stubborn user would: every place, stage, part and tab is shown,
/// everything that can be pressed or chosen from a menu is, and what comes up is looked at and
/// given up. What was changed on the way is undone.
class WindowWalk final : public QObject {
public:
    /// Told of the window, of each dialog and each menu, and where it came up.
    using Visit = std::function<void(QWidget& shown, const QString& where)>;

    WindowWalk(MainWindow& window, Desk& desk, Visit visit);

    /// Only looks at pages and menus, without pressing anything.
    void onlyLook() { m_presses = false; }
    /// Houses, plans, each part of the book, the office.
    void everyPlace();
    /// Each stage of a plan or house.
    void everyStage(const JobRef& job);

    /// Titles of the dialogs that came up.
    const std::set<QString>& dialogs() const { return m_dialogs; }
    int pressed() const { return m_pressed; }

private:
    /// Shows a page, whatever was shown before, and says which it is.
    using Show = std::function<QWidget*()>;

    void visit(QWidget& shown, const QString& where);
    void page(const Show& show, const QString& where);
    void tabs(const Show& show, const QString& where);
    void pressOn(const Show& show, const QString& where);
    void chooseFrom(const std::function<QMenu*()>& find, const QString& where);
    void chooseFromBar(const Show& show, const QString& title, const QString& where);
    void press(const std::function<void()>& what, const QString& where);
    void lookAtPopped();
    void lookAtOthers();
    void takeBack(int index);
    QMenu* menuOfBar(const QString& title) const;

    MainWindow& m_window;
    Desk& m_desk;
    Visit m_visit;
    QTimer m_look;
    QString m_where;
    std::set<QString> m_dialogs;
    std::set<QString> m_chosen; ///< of menus, by their words
    int m_pressed = 0;
    bool m_looking = false;
    bool m_presses = true;
};

} // namespace miterbook
