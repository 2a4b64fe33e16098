// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace miterbook {

/// Asks before something large is done. `yes` is the button that does it; the other keeps things as
/// they are and is what Enter and Escape mean.
bool ask(QWidget* parent, const QString& question, const QString& comfort, const QString& yes);

} // namespace miterbook
