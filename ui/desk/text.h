// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>
#include <string_view>

namespace miterbook {

/// The one bridge between the core's UTF-8 and Qt's strings.
inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

inline std::string utf8(const QString& string) {
    return string.toStdString();
}

/// The user's text for a menu or button, where a single ampersand would mark a key.
inline QString menuText(QString words) {
    return words.replace(QLatin1Char('&'), QLatin1String("&&"));
}

} // namespace miterbook
