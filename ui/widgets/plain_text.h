// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QLabel;
class QWidget;

namespace miterbook {

/// A tooltip that can only be plain text: Qt takes a tip that looks like HTML for HTML.
QString safeTip(const QString& plain);

/// A label that shows its text as it is, wraps, and can be selected by mouse and keyboard.
QLabel* plainLabel(const QString& plain, QWidget* parent = nullptr);
/// The same, larger: the head of a page or part.
QLabel* headLabel(const QString& plain, QWidget* parent = nullptr);
/// The same, quieter: a hint beside something.
QLabel* hintLabel(const QString& plain, QWidget* parent = nullptr);

/// `one` for 1, else `many` with the number in place of %1: "1 row", "3 rows".
QString counted(qsizetype number, const QString& one, const QString& many);

/// What a screen reader says of a cell: its column, its text, and what is special about the row.
QString spokenCell(const QString& title, const QString& cell, const QString& mark);

} // namespace miterbook
