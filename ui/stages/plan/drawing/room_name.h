// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/label_font.h"

#include <QSizeF>
#include <QString>

#include <vector>

namespace miterbook {

/// How a room's name is written where it is drawn small.
struct FittedName {
    QString text;       ///< with a line end where it stands in two lines
    bool small = false; ///< in the small letters of marks, not in bold ones

    int lines() const { return text.contains(QChar(u'\n')) ? 2 : 1; }
    bool operator==(const FittedName&) const = default;
};

/// Those of these that fit into the room, in this order: the name, in two lines, both in small
/// letters, the room's number, the name cut off to three letters or more.
std::vector<FittedName> fittedNames(const QString& name, const QString& number, QSizeF room,
    const LabelFont& bold, const LabelFont& small);

} // namespace miterbook
