// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QPushButton;

namespace miterbook {

class TableModelBase;
class TablePanel;

/// A button beside a table's find line: saves its rows as a CSV file and brings such a file in.
QPushButton* addFileButton(TablePanel& panel);

/// What a file has done to a table, as it is said to the user. Empty when it was refused; the
/// table's desk has then said why.
QString bringTableFile(TableModelBase& model, const QString& path);

} // namespace miterbook
