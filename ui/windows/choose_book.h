// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <optional>

class QWidget;

namespace miterbook {

/// A book file that the user chose, to be made or opened.
struct BookChoice {
    QString path;
    bool isNew = false;
};

/// Asks whether to begin a new book or open one, and where. Nothing when the user wants neither.
std::optional<BookChoice> chooseBook();

/// Asks where the book that is made of a damaged one shall be; empty when the user wants none.
QString askForSalvaged(QWidget* parent, const QString& damaged);

} // namespace miterbook
