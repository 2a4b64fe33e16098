// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <set>

class QWidget;

namespace miterbook {

/// What a screen reader would find in what is shown.
struct SpokenTree {
    int controls = 0; ///< that can take the focus
    int cells = 0;    ///< of tables, lists and trees; the first ones of each
    std::set<QString> roles;
    QStringList faults; ///< controls without a name or with a role that is not theirs
};

/// Walks the accessible objects below a widget, those that are shown, as a screen reader does.
SpokenTree spokenTree(QWidget& root);

} // namespace miterbook
