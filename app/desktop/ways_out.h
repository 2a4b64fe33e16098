// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QString>

class QWidget;

namespace miterbook {

class Clock;

/// What is to be done with a book that could not be opened for writing.
enum class WayOut {
    none,     ///< nothing, or something else
    look,     ///< open it for looking only
    again,    ///< it has been replaced or mended: open it
    salvaged, ///< a new book has been made of it: open that
};

struct WayTaken {
    WayOut way = WayOut::none;
    QString book;
};

/// Says why a book could not be opened and offers what can be done about it: looking only, a backup
/// in its place, a salvage into a new book. What is chosen has been done when it returns.
WayTaken offerWaysOut(QWidget* parent, const QString& book, const Error& error, const Clock& clock);

} // namespace miterbook
