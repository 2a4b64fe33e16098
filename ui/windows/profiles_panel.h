// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace miterbook {

class Desk;

/// The profiles of the book, and beside them the sticks of the one that is current.
QWidget* profilesPanel(Desk& desk);

} // namespace miterbook
