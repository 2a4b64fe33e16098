// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/accent.h"

#include <QPalette>
#include <QWidget>

namespace miterbook {

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < 128;
}

QColor accentColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xE0, 0xA9, 0x6D) : QColor(0x8A, 0x4B, 0x12); // planed oak
}

void setAccentText(QWidget& widget) {
    QPalette palette = widget.palette();
    palette.setColor(QPalette::WindowText, accentColour(palette));
    widget.setPalette(palette);
}

} // namespace miterbook
