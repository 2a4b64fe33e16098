// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenu;
class QWidget;

namespace miterbook {

/// Fills the help menu: how a job walks through the book, the keys, and what this program is.
void fillHelpMenu(QMenu& menu, QWidget& window);

} // namespace miterbook
