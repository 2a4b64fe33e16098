// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QAction;

namespace miterbook {

/// What a page shows while it has nothing to show: what to do first, and a button that does it.
class EmptyPage : public QWidget {
    Q_OBJECT
public:
    /// `action` may be null; then there is no button. It must outlive the page.
    EmptyPage(const QString& head, const QString& hint, QAction* action, QWidget* parent = nullptr);
};

} // namespace miterbook
