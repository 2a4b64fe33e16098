// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/recent_books.h"

#include <QFileInfo>
#include <QSettings>

namespace miterbook {

namespace {

constexpr int mostBooks = 10;
const QString key = QStringLiteral("recentBooks");

} // namespace

QStringList recentBooks() {
    QStringList there;
    for (const QString& path : QSettings().value(key).toStringList()) {
        if (QFileInfo::exists(path))
            there << path;
    }
    return there;
}

void rememberBook(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList paths = recentBooks();
    paths.removeAll(whole);
    paths.prepend(whole);
    QSettings().setValue(key, paths.mid(0, mostBooks));
}

} // namespace miterbook
