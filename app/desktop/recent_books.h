// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

namespace miterbook {

/// Book files opened lately that are still there, latest first; ten at most.
QStringList recentBooks();

/// Puts a book at the head of the list.
void rememberBook(const QString& path);

} // namespace miterbook
