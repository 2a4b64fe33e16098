// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStackedWidget>
#include <QTabWidget>

namespace miterbook {

// Pages of which one is seen. Unlike Qt's own they do not ask how high each page would have to be
// at their width: a page takes the room there is, and laying out the text of all the pages that are
// not seen took half the time of a tick on the saw sheet.

class PageStack final : public QStackedWidget {
public:
    using QStackedWidget::QStackedWidget;
    bool hasHeightForWidth() const override { return false; }
};

class PageTabs final : public QTabWidget {
public:
    using QTabWidget::QTabWidget;
    bool hasHeightForWidth() const override { return false; }
};

} // namespace miterbook
