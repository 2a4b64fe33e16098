// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QStringList>

#include <string_view>

class QFontMetricsF;
class QPaintDevice;

namespace miterbook {

/// A text as it is printed: one line, no control characters, nothing that turns the direction of
/// the text after it.
QString printable(std::string_view utf8);

/// Breaks a text between words, or anywhere in a word that is wider, into lines no wider than
/// `width` dots of the device. At least one line.
QStringList wrapText(const QString& text, const QFont& font, const QFontMetricsF& metrics,
    QPaintDevice* device, double width);

} // namespace miterbook
