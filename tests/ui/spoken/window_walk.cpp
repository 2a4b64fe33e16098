// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken/window_walk.h"

#include "desk/desk.h"
#include "ui/spoken/pressable.h"
#include "widgets/data_table.h"
#include "windows/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QProgressDialog>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QTabWidget>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

constexpr int lookEvery = 5; // milliseconds

/// For the eye: a picture of everything that is visited, named by where it came up.
void keepPicture(QWidget& shown, const QString& where) {
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
    if (folder.isEmpty())
        return;
    QString name = where;
    name.replace(QRegularExpression(u"[^A-Za-z0-9]+"_s), u"-"_s);
    shown.grab().save(folder + u'/' + name.left(120) + u".png"_s);
}

void settle() {
    for (int i = 0; i < 3; ++i)
        QApplication::processEvents();
}

} // namespace

WindowWalk::WindowWalk(MainWindow& window, Desk& desk, Visit visit)
    : m_window(window)
    , m_desk(desk)
    , m_visit(std::move(visit)) {
    connect(&m_look, &QTimer::timeout, this, &WindowWalk::lookAtPopped);
    m_look.start(lookEvery);
}

void WindowWalk::everyPlace() {
    const auto place = [this](MainWindow::Place which) -> Show {
        return [this, which] {
            m_window.showPlace(which);
            settle();
            return m_window.centralWidget()->findChild<QStackedWidget*>()->currentWidget();
        };
    };
    page(place(MainWindow::houses), u"Houses"_s);
    for (const QString& title : {u"&Book"_s, u"&Edit"_s, u"&Go"_s, u"&Help"_s})
        chooseFromBar(place(MainWindow::houses), title, u"Houses"_s);
    page(place(MainWindow::plans), u"Plans"_s);
    auto* parts = place(MainWindow::book)()->findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row) {
        const Show show = [shown = place(MainWindow::book), parts, row] {
            QWidget* book = shown();
            parts->setCurrentRow(row);
            settle();
            return book;
        };
        page(show, u"The book / "_s + parts->item(row)->text());
    }
    page(place(MainWindow::office), u"Office"_s);
}

void WindowWalk::everyStage(const JobRef& job) {
    m_window.showJob(job);
    QMenu* go = menuOfBar(u"&Go"_s);
    for (QAction* stage : go->actions()) {
        const QKeySequence key = stage->shortcut();
        if (key.isEmpty() || key[0].keyboardModifiers() != Qt::ControlModifier)
            continue;
        const Show show = [this, stage, job] {
            if (!(m_window.figures().job() == job))
                m_window.showJob(job);
            stage->trigger();
            settle();
            QWidget* place
                = m_window.centralWidget()->findChild<QStackedWidget*>()->currentWidget();
            return place->findChild<QStackedWidget*>()->currentWidget();
        };
        page(show, (job.house ? u"House / "_s : u"Plan / "_s) + stage->text());
    }
}

/// The page as it is, then each of its tabs.
void WindowWalk::page(const Show& show, const QString& where) {
    show();
    visit(m_window, where);
    if (m_presses)
        pressOn(show, where);
    for (const QString& title : {u"&Rows"_s, u"P&age"_s, u"&Papers"_s})
        chooseFromBar(show, title, where);
    tabs(show, where);
}

void WindowWalk::tabs(const Show& show, const QString& where) {
    QWidget* root = show();
    for (QTabWidget* each : root->findChildren<QTabWidget*>()) {
        if (!each->isVisible() || isBelowTabs(*each, *root))
            continue;
        for (int tab = 0; tab < each->count(); ++tab) {
            if (!each->isTabVisible(tab) || !each->isTabEnabled(tab))
                continue;
            const Show showTab = [show, each, tab] {
                show();
                each->setCurrentIndex(tab);
                settle();
                return each->widget(tab);
            };
            page(showTab, where + u" / "_s + each->tabText(tab));
        }
    }
}

void WindowWalk::pressOn(const Show& show, const QString& where) {
    for (const QString& name : pressable(*show())) {
        const auto button = [show, name] { return buttonNamed(*show(), name); };
        const QAbstractButton* found = button();
        if (!found)
            continue;
        if (menuOf(*found)) {
            chooseFrom(
                [button]() -> QMenu* {
                    const QAbstractButton* again = button();
                    return again ? menuOf(*again) : nullptr;
                },
                where + u" / "_s + name);
            continue;
        }
        const auto click = [button] {
            if (QAbstractButton* again = button(); again && again->isEnabled())
                again->click();
        };
        press(click, where + u" / "_s + name);
        if (found = button(); found && found->isCheckable())
            press(click, where + u" / "_s + name);
    }
}

QMenu* WindowWalk::menuOfBar(const QString& title) const {
    for (const QAction* action : m_window.menuBar()->actions()) {
        if (action->text() == title)
            return action->menu();
    }
    return nullptr;
}

void WindowWalk::chooseFromBar(const Show& show, const QString& title, const QString& where) {
    const auto find = [this, show, title] {
        QWidget* root = show();
        for (auto* table : root->findChildren<DataTable*>()) {
            if (table->isVisible()) {
                table->setFocus();
                break;
            }
        }
        return menuOfBar(title);
    };
    chooseFrom(find, where + u" / menu "_s + plainWords(title));
}

void WindowWalk::chooseFrom(const std::function<QMenu*()>& find, const QString& where) {
    QMenu* menu = find();
    if (!menu)
        return;
    Q_EMIT menu->aboutToShow();
    visit(*menu, where);
    QStringList words;
    for (const QAction* action : menu->actions()) {
        if (!action->isSeparator())
            words << action->text();
    }
    for (const QString& word : words) {
        if (word == u"&Quit"_s)
            continue;
        const auto action = [find, word]() -> QAction* {
            QMenu* again = find();
            if (!again)
                return nullptr;
            Q_EMIT again->aboutToShow();
            return actionNamed(*again, word);
        };
        const QAction* found = action();
        if (found && found->menu()) {
            chooseFrom(
                [action]() -> QMenu* {
                    const QAction* again = action();
                    return again ? again->menu() : nullptr;
                },
                where + u" / "_s + plainWords(word));
            continue;
        }
        // The same words do the same on every page.
        if (m_presses && found && found->isEnabled() && m_chosen.insert(word).second)
            press(
                [action] {
                    if (QAction* again = action())
                        again->trigger();
                },
                where + u" / "_s + plainWords(word));
    }
}

void WindowWalk::press(const std::function<void()>& what, const QString& where) {
    m_where = where;
    const int index = m_desk.undoStack().index();
    what();
    settle();
    lookAtPopped();
    lookAtOthers();
    takeBack(index);
    ++m_pressed;
}

void WindowWalk::visit(QWidget& shown, const QString& where) {
    keepPicture(shown, where);
    m_visit(shown, where);
}

/// Dialogs and menus that wait for an answer run a loop of their own, in which this is called.
void WindowWalk::lookAtPopped() {
    if (m_looking)
        return;
    m_looking = true;
    if (QWidget* popup = QApplication::activePopupWidget()) {
        visit(*popup, m_where);
        popup->close();
    } else if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
        if (!qobject_cast<QProgressDialog*>(dialog)) {
            m_dialogs.insert(plainWords(dialog->windowTitle()));
            visit(*dialog, m_where);
            dialog->reject();
        }
    }
    m_looking = false;
}

/// Windows that came up and let one go on.
void WindowWalk::lookAtOthers() {
    for (QWidget* other : QApplication::topLevelWidgets()) {
        auto* dialog = qobject_cast<QDialog*>(other);
        if (!dialog || !dialog->isVisible())
            continue;
        m_dialogs.insert(plainWords(dialog->windowTitle()));
        visit(*dialog, m_where);
        dialog->close();
    }
    settle();
}

void WindowWalk::takeBack(int index) {
    QUndoStack& stack = m_desk.undoStack();
    stack.setIndex(std::min(index, stack.count()));
}

} // namespace miterbook
