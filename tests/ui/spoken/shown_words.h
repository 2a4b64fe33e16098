// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QWidget;

namespace miterbook {

/// Every text that is shown below a widget: of labels, buttons, fields and what stands in empty
/// ones, tabs, menus, tables with their titles and tips, and what screen readers are told.
QStringList shownWords(QWidget& root);

} // namespace miterbook
