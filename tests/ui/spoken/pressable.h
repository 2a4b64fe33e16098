// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QAbstractButton;
class QAction;
class QMenu;
class QWidget;

namespace miterbook {

/// Words without the marks for keys.
QString plainWords(QString words);

/// Whether tabs stand between a widget and the page it is on.
bool isBelowTabs(const QWidget& widget, const QWidget& page);

/// Names of all buttons of a page that can be pressed, but for those on its tabs.
QStringList pressable(const QWidget& page);

/// The button of that name; nullptr where there is none any more.
QAbstractButton* buttonNamed(const QWidget& page, const QString& name);

/// The menu that a button opens; nullptr for none.
QMenu* menuOf(const QAbstractButton& button);

QAction* actionNamed(const QMenu& menu, const QString& words);

} // namespace miterbook
