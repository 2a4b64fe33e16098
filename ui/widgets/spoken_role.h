// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessible>

class QWidget;

namespace miterbook {

/// Says to screen readers what a widget is that Qt knows nothing of: a drawing, a chart. To be
/// called before anything else is said of the widget.
void speakAs(QWidget& widget, QAccessible::Role role);

} // namespace miterbook
