// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

class QWidget;

namespace miterbook {

/// Something to be said in a box of its own; every text is shown as it is, never as markup.
struct Notice {
    QString sentence;
    QString more = {};    ///< smaller, below
    QString details = {}; ///< folded away until asked for
    QString title = QStringLiteral("Miterbook");
};

/// Says something and waits until it has been read.
void tell(QWidget* parent, const Notice& notice);

/// Says something and offers ways on, besides leaving it at that. The place of the way that was
/// chosen; nothing when none was.
std::optional<qsizetype> askWay(QWidget* parent, const Notice& notice, const QStringList& ways);

} // namespace miterbook
