// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace miterbook {

class Desk;

// The forms of the book's single rows. Each scrolls when it is taller than the window.

QWidget* shopForm(Desk& desk);
QWidget* practiceForm(Desk& desk);
QWidget* termsForm(Desk& desk);

} // namespace miterbook
