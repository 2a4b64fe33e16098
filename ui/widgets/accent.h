// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

class QPalette;
class QWidget;

namespace miterbook {

/// The one accent: for the stage that is shown, the next step, and what a picture is about. A dark
/// shade on light palettes and a light one on dark palettes, so that it reads on either.
QColor accentColour(const QPalette& palette);
bool isDark(const QPalette& palette);
/// Writes the widget's text in the accent.
void setAccentText(QWidget& widget);

} // namespace miterbook
