// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/printable_text.h"

#include "papers/plain_text.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>

namespace miterbook {

namespace {

/// Marks that set a direction for what follows [pub: Unicode UAX 9, explicit directional
/// formatting].
bool turnsDirection(QChar c) {
    const char16_t code = c.unicode();
    return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
}

bool isBreak(QChar c) {
    return c == QChar::LineSeparator || c == QChar::ParagraphSeparator
        || c.category() == QChar::Other_Control;
}

} // namespace

QString printable(std::string_view utf8) {
    const std::string line = oneLine(utf8);
    QString text = QString::fromUtf8(line.data(), static_cast<qsizetype>(line.size()));
    for (QChar& c : text) {
        if (turnsDirection(c) || isBreak(c))
            c = QLatin1Char(' ');
    }
    return text;
}

QStringList wrapText(const QString& text, const QFont& font, const QFontMetricsF& metrics,
    QPaintDevice* device, double width) {
    if (metrics.horizontalAdvance(text) <= width)
        return {text};
    QTextLayout layout(text, font, device);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    QStringList lines;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(width, 1.0));
        lines << text.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines;
}

} // namespace miterbook
