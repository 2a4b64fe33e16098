// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken/pressable.h"

#include "windows/nav_bar.h"

#include <QMenu>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QToolButton>

namespace miterbook {

namespace {

QString nameOf(const QAbstractButton& button) {
    const QString name = button.accessibleName();
    return name.isEmpty() ? plainWords(button.text()) : name;
}

/// Buttons that lead elsewhere or are Qt's own.
bool isApart(const QAbstractButton& button) {
    const QWidget* parent = button.parentWidget();
    return qobject_cast<const NavBar*>(parent) || qobject_cast<const QTabBar*>(parent)
        || qobject_cast<const QTableView*>(parent);
}

QList<QAbstractButton*> buttonsOf(const QWidget& page) {
    QList<QAbstractButton*> found;
    for (QAbstractButton* button : page.findChildren<QAbstractButton*>()) {
        if (button->isVisible() && button->isEnabled() && !isApart(*button)
            && !isBelowTabs(*button, page))
            found << button;
    }
    return found;
}

} // namespace

QString plainWords(QString words) {
    return words.remove(u'&');
}

bool isBelowTabs(const QWidget& widget, const QWidget& page) {
    for (const QWidget* up = widget.parentWidget(); up && up != &page; up = up->parentWidget()) {
        if (qobject_cast<const QTabWidget*>(up))
            return true;
    }
    return false;
}

QStringList pressable(const QWidget& page) {
    QStringList names;
    for (const QAbstractButton* button : buttonsOf(page))
        names << nameOf(*button);
    names.removeDuplicates();
    return names;
}

QAbstractButton* buttonNamed(const QWidget& page, const QString& name) {
    for (QAbstractButton* button : buttonsOf(page)) {
        if (nameOf(*button) == name)
            return button;
    }
    return nullptr;
}

QMenu* menuOf(const QAbstractButton& button) {
    if (const auto* push = qobject_cast<const QPushButton*>(&button))
        return push->menu();
    if (const auto* tool = qobject_cast<const QToolButton*>(&button))
        return tool->menu();
    return nullptr;
}

QAction* actionNamed(const QMenu& menu, const QString& words) {
    for (QAction* action : menu.actions()) {
        if (action->text() == words)
            return action;
    }
    return nullptr;
}

} // namespace miterbook
